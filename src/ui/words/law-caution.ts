export const LAW_CAUTION =
  'Guidance, as read on the day named. Check with the authority; the law of the place, the outfitter and the licensed guide decide.'
