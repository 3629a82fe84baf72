/** How each page works, in the words of the trade; and what the keyboard does. */

import type { HelpTopic } from '../help/help-topics'

export interface Help {
  readonly title: string
  readonly lines: readonly string[]
}

export const HELP: Readonly<Record<HelpTopic, Help>> = {
  jobs: {
    title: 'Jobs',
    lines: [
      'A job is one order: a client, a bow, a hunt, a set of arrows. Begin one with the client on the phone.',
      'Each job has four stages, in any order that the day brings: call, sheet, bench, send. Its front page says how each stands and what is still open.',
      'A build of the past is not begun here: find it in the Book and build it again.',
    ],
  },
  call: {
    title: 'Call',
    lines: [
      'Ask in any order. What the answers imply stands beside them at once: weight, speed, stiffness, C2C, ship date. What had to be assumed says so.',
      'What the client does not know is put off with one tap, becomes an open question, and goes onto the measuring sheet with a drawing of how to take it.',
      'Numbers may carry their unit: grams, centimetres and kilograms are understood. A number with two readings is asked about.',
      'The read-back says everything agreed, to be read aloud. Agreed, it fixes price and day; the summary is printed or pasted into a message.',
    ],
  },
  sheet: {
    title: 'Sheet',
    lines: [
      'The plan of one arrow. Add parts from the shelf, or let Find parts search the whole stock for the weight, the FOC and the reserve wanted.',
      'The landing shows where the finished weight heads to, with its band, and what the post can still give. Every figure opens to its working.',
      'Clearance is drawn at full draw, best from a nocked arrow marked at rest and riser. The column reserve is an index: bare-shaft tuning on the bow decides.',
      'Freeze makes a version that never changes. From the second on it wants a reason. The set is built to the frozen version.',
    ],
  },
  bench: {
    title: 'Bench',
    lines: [
      'One step, one reading at a time. Type what the scale says and press Enter: it is taken, saved, and the next arrow is up. At trim, Enter takes the weight and stays.',
      'A scale on a cable, or one that types, gives its reading by itself, but only when it is steady and in the right unit.',
      'An odd reading is asked about, not refused: grams for grains, a slipped point, a pan that was not cleared.',
      'Out of tolerance opens a deviation. Work goes on; signing off waits until each is decided. Mend offers only what is still possible at this step.',
      'A correction keeps what it corrects. Close the lid at any time: the bench opens where you were. The route card on paper carries the same steps.',
    ],
  },
  send: {
    title: 'Send',
    lines: [
      'Each arrow stands against its own target, the set with its spread. Signing off says what is missing: a weight, an inspection, an undecided deviation, counts that do not add up.',
      'The box takes its papers along: client sheet, page for the guide, certificate, packing list, label and tags. Heads travel off the arrow, capped.',
      'Afterwards each arrow goes on with its own story: weighed again, repaired, refletched, retired with its cause. A repair is begun with the weight as it came back and goes step by step; it is closed with the new weight, and not before its glue has had its time.',
    ],
  },
  kit: {
    title: 'Test kit',
    lines: [
      'Two or three arrows of different stiffness before an expensive set. Propose a kit takes the fewest shafts of the shelf that bracket what the bow calls for.',
      'Build them on the bench as a small set of their own, or send what is built already, with the return form.',
      'Enter what comes back. The shaft that flew best bare goes onto the sheet, the speeds to the bow, and the reserve this bow likes is narrowed.',
    ],
  },
  book: {
    title: 'Book',
    lines: [
      'Every job and every build, found by client, quarry, bow, weight, day, lot or label code. A scanner that types the code of a label opens the build.',
      'A build shows plan beside as-built, the difference between any two versions, and every reading with who, when and how.',
      'Build this again asks what survives and what it weighs now, works out today’s way to the same arrow, and opens a rebuild sheet with then and now side by side.',
    ],
  },
  parts: {
    title: 'Parts',
    lines: [
      'Parts by kind, each with its lots. A lot keeps what the catalogue says and what the shop has weighed; from a few weighings on, the shop’s own count.',
      'What is on hand follows from the jobs: frozen sheets reserve, the bench uses, a scrapped arrow gives back what can go back. A count sets it right.',
      'Tables come in and go out as CSV, and are shown before anything is added.',
    ],
  },
  shop: {
    title: 'Shop',
    lines: [
      'The shop’s own rules: tolerances, bands, scales with their check weights, jigs, glues, the route of the bench, prices, place rules with their dates.',
      'Everything is kept on this device alone. Back up to a file and keep it on another; check a backup before you trust it.',
      'The archive is the whole book as one page to read without the app, with the records inside.',
    ],
  },
}

/** What a key does, and where. */
export const KEYS: readonly (readonly [keys: string, does: string])[] = [
  ['Tab, Shift Tab', 'to the next thing that can be used, and back'],
  ['Enter', 'keeps what was typed; follows a link; presses a button'],
  ['Enter, on the call', 'keeps the answer and goes to the next question; in a note, with Ctrl'],
  ['Enter, at the bench', 'takes the reading and goes to the next arrow; at trim it takes the weight and stays'],
  ['Enter, in the Book', 'opens the build whose code was typed or scanned'],
  ['Space', 'ticks a box, presses a button, opens a working'],
  ['Arrow keys', 'from one choice of a question to the next'],
  ['A letter, on a choice of the call', 'takes the next choice that begins with it'],
  ['Esc', 'closes a dialog and keeps nothing of it'],
]

export const KEYS_NOTE =
  'No key does anything by itself anywhere: a scale or a scanner that types can never press a button.'
