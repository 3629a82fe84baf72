/** The words of the trade as the app uses them, for the page of help; docs/glossary.md has the same and what to avoid. */
export interface GlossaryTopic {
  readonly title: string
  readonly terms: readonly (readonly [term: string, meaning: string])[]
}

export const GLOSSARY: readonly GlossaryTopic[] = [
  {
    title: 'The arrow',
    terms: [
      ['weight', 'What the scale shows.'],
      ['grain, gr', 'Unit of weight: 7000 to the pound, 64.79891 mg exactly.'],
      ['finished weight', 'Weight of the complete arrow, glue cured, head on.'],
      [
        'weight less head',
        'Finished weight without the head. A set is trimmed to this, so that one head can take another’s place.',
      ],
      [
        'shaft',
        'The carbon shaft alone. Its catalogue names static spine, weight per inch, both diameters, straightness and raw length.',
      ],
      ['raw length', 'Length of the shaft as it came.'],
      ['C2C', 'Carbon to carbon: length of the bare shaft after cutting, from end face to end face.'],
      [
        'static spine',
        'Sag of a shaft under 1.94 lb hung from its middle, supports 28 in apart. Kept in inches, shown in thousandths: 0.340 in is 340.',
      ],
      ['nock', 'The clip at the rear that holds the string: pressed in, on a bushing with a pin, or lighted.'],
      ['throat', 'Bottom of the nock’s groove. Every position along the arrow is measured from here.'],
      ['vane, feather', 'One fin.'],
      ['cock vane', 'The fin that stands for the angle of all.'],
      [
        'fletch',
        'The fins of one arrow together: three or four, with a side and degrees; also the work of gluing them on.',
      ],
      ['wrap', 'Printed film around the shaft under the vanes.'],
      ['insert', 'A part whose post is glued into the shaft and whose shoulder stops at its front.'],
      [
        'post',
        'The part of an insert that sits inside the shaft. Its rear end is where the last grains are ground off.',
      ],
      ['shoulder', 'The step of an insert that rests on the shaft’s front face.'],
      ['half-out', 'Like an insert, but its body holds the head ahead of the shaft.'],
      ['outsert', 'A part over the outside of the shaft’s front that holds the head.'],
      [
        'sleeve, collar, footing',
        'Parts around the outside of the shaft, for weight or to keep its end from splitting.',
      ],
      ['head', 'Whatever is screwed into the front.'],
      ['broadhead', 'A head with blades, for hunting.'],
      ['field point', 'A head without blades, for practice.'],
      ['bevel', 'Side on which a blade is ground. Right goes with a right fletch, left with a left one.'],
      ['balance point', 'Where the complete arrow balances, measured from the throat.'],
      ['FOC', 'Front of centre: how far the balance point lies ahead of the arrow’s middle, in percent of its length.'],
      [
        'arrow length',
        'From the throat to the front of the shaft, or to the shoulder of an outsert. Never to the tip of the head.',
      ],
      [
        'run-out',
        'Full swing of a dial when the arrow is turned once on rollers, at a named place, with the angle of its high side.',
      ],
      ['spine mark', 'A line on the shaft that shows its stiffest plane.'],
      ['indexing', 'Turning head or nock to a chosen plane before the glue sets.'],
      ['lot', 'Parts that came together. A lot may be unknown, and the record then says so.'],
    ],
  },
  {
    title: 'The bow',
    terms: [
      ['draw weight', 'The most force the bow asks for while it is drawn, measured on a scale.'],
      ['draw length', 'From the string at full draw to the grip’s pivot, plus 1¾ in.'],
      ['brace height', 'From the string at rest to the grip’s pivot.'],
      ['power stroke', 'How far the string travels: draw length less 1¾ in less brace height.'],
      ['let-off', 'How much of the draw weight is gone at full draw, in percent.'],
      ['module mark', 'The letter or number on the cam that sets draw length or draw weight.'],
      ['release', 'The release aid on the archer’s hand. A finished set is not released: it is signed off and sent.'],
      ['gpp', 'Grains of finished weight per pound of draw weight.'],
      ['energy', 'Kinetic energy of the arrow: it grows with the weight, and with the square of the speed.'],
      ['momentum', 'What grows with the weight and with the speed of the arrow alike.'],
      ['virtual mass', 'How much heavier the arrow seems to its bow, because string and limbs move with it.'],
      [
        'column reserve',
        'Force at which the shaft would bow out as a column, over the greatest push of the string. An index, below one for many good arrows.',
      ],
      ['stiffness called for', 'The range of static spine whose column reserve lies in the shop’s band.'],
    ],
  },
  {
    title: 'The work',
    terms: [
      ['job', 'One order: a client, a bow, a hunt and a set of arrows.'],
      ['call', 'First stage: what the client says on the phone.'],
      ['read-back', 'End of the call: everything agreed, in sentences to read aloud.'],
      ['open question', 'Something not known yet, with who owes the answer.'],
      ['measuring sheet', 'The page that shows a client how to measure what is still missing.'],
      ['sheet', 'Second stage: the plan of one arrow, and the record it becomes.'],
      ['freeze', 'Make a version of the sheet that never changes again.'],
      ['bench', 'Third stage: building, one step and one reading at a time.'],
      ['send', 'Fourth stage: last inspection, signing off, packing, paper.'],
      [
        'signed off',
        'A set whose every arrow is accepted or scrapped, whose every deviation is decided and whose counts add up.',
      ],
      ['as-built', 'The record of a signed-off set: every reading of every arrow.'],
      ['rebuild', 'The same arrow again, from the as-built, with the parts of today.'],
      ['test kit', 'Two or three sample arrows that a client shoots before a set is built.'],
      ['reading', 'One value off a scale, rule or dial, with the text as it was read.'],
      [
        'heads to',
        'Where an arrow’s finished weight is expected to end up, from what was read and what is still expected.',
      ],
      ['landing', 'The picture of where each arrow heads to, around its target.'],
      ['light, heavy', 'Below the target, above it.'],
      ['trim', 'Take grains off, as a rule from the rear of the post.'],
      ['pass', 'One touch on the grinder.'],
      ['dry fit', 'The whole arrow put together without glue, to be weighed.'],
      ['spin test', 'Turning the arrow on rollers and watching for run-out.'],
      ['jig, clamp', 'What holds a vane in place while its glue sets.'],
      ['cure', 'Hardening of a glue: until it may be handled, shot, and is at full strength.'],
      ['mend', 'The smallest change, still possible at this step, that brings an arrow back on its number.'],
      ['deviation', 'A reading outside its tolerance, with the cause and what was decided.'],
      ['book', 'Every sheet, every as-built and every client.'],
    ],
  },
]
