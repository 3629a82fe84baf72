/** The cautions that travel with the arrows; their sources stand in docs/cautions.md. */
export const CLIENT_CAUTIONS: readonly string[] = [
  'Look at shaft, nock and vanes. Flex the shaft away from yourself and others, head off, glasses on, all around, and listen: one that creaks or feels soft is broken. Do not shoot it.',
  'Screw a broadhead in and out only with its wrench; heads travel off the arrow, capped.',
  'Shoot these arrows only from the bow they were made for, at the draw weight and length they were made for. Ask before you change bow, draw weight, draw length or head weight.',
  'An arrow too light, too short or too soft for its bow can injure you and break the bow.',
  'The shaft maker’s own limits stand above every figure on this sheet.',
  'Energy and momentum say what an arrow carries, not what it will do. The law of the place, the outfitter and the licensed guide decide what may be hunted with it: check with them before the hunt.',
]
