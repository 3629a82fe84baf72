/** Sentences of the papers that travel with the arrows. Where each caution comes from stands in docs/cautions.md. */

/** How a test kit is shot; common practice, no source [CP]. */
export const KIT_STEPS: readonly string[] = [
  'Glasses on, head off: flex and twist each arrow away from yourself, all around, and listen. One that creaks is not shot.',
  'Shoot the fletched arrows with field points at 20 yards until you hold one group. A clear butt behind the target; nobody near.',
  'Shoot the bare one of each shaft at the same mark, from 10 yards first. Write how far it lands from the fletched group. A shaft that kicks hard at 10 yards is not shot further away.',
  'Last, shoot the broadheads, put in with their wrench, one at a time. Write how far they land from the field points.',
  'Write the speed of each arrow when you have a chronograph.',
  'Change nothing on the bow meanwhile. Send this form back with the arrows.',
]

/** Care of the arrows from the box to the hunt and back; common practice, no source [CP], unless docs/cautions.md says more. */
export const CARE: readonly string[] = [
  'Flex test: head off, glasses on. Hold the shaft at both ends, bend it gently away from yourself and others, turn it a quarter, and again, all around. Then twist it. Listen and feel: a creak, a soft spot or a splinter is the end of that arrow. Break it in two and throw it away.',
  'After every hit on something hard, and after any miss that was not found at once, do the flex test before the arrow is shot again.',
  'Spin the arrow on its point. A wobble that was not there before means a bent insert or a broken shaft.',
  'Look at the nock: no cracks, and it clicks on the string and comes off with a tap. Replace a doubtful nock; a nock that lets go is a bow shot empty.',
  'Broadheads: sharp, straight, screwed home with the wrench. Cut yourself once less: never screw one in with bare fingers, never walk with one nocked, cover them in the quiver.',
  'Keep the arrows dry and out of a hot car: the glue softens long before the shaft shows it.',
  'Practise with the field points that came along: they weigh what the broadheads weigh. Shoot each broadhead once before the hunt, then sharpen it.',
]

/** What a guide or an outfitter is told beside the figures. */
export const GUIDE_NOTES: readonly string[] = [
  'Weights are as built and weighed; speed, energy and momentum are calculated for the archer’s own bow, or left open where it was not measured.',
  'Energy and momentum say what an arrow carries, not what it will do in an animal. Where and when to shoot is for the licensed guide and the archer to decide.',
  'Legal minimums change. The law of the place, as it reads on the day of the hunt, stands above this sheet.',
]

/** What the certificate says of itself. */
export const CERTIFICATE_NOTE =
  'Every reading below was taken on the bench and is kept with who took it and when; nothing was altered after signing off, and a later change makes a new version with its reason. The record’s hash shows whether it was.'
