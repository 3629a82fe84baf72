import { describe, expect, it } from 'vitest'
import { known, term } from '@/core/outcome'
import { feetPerSecond, grains, ratio } from '@/core/quantity'
import { workingText } from '@/ui/words/working-text'

describe('workingText', () => {
  it('says in lines what the screen shows: equation, inputs in both units, origins, result, source, steps', () => {
    const { derivation } = known(feetPerSecond(200), {
      equation: 'v = d / t',
      inputs: [
        term('arrow mass', grains(650), 'gr', 'catalogue', 'Tern 200'),
        term('share', ratio(0.5), '1', 'assumed'),
      ],
      result: [term('speed', feetPerSecond(200), 'ft/s')],
      source: ['SP811', 'CP'],
      note: 'Still air.',
      steps: [{ equation: 'd = 3', inputs: [], result: [term('one', ratio(1), '1')], source: ['SP811'] }],
    })
    expect(workingText('Speed', derivation)).toBe(
      [
        'Speed',
        'v = d / t',
        '  arrow mass: 650 gr = 42.1193 g (catalogue, Tern 200)',
        '  share: 0.5 (assumed)',
        '  gives speed: 200 ft/s = 60.96 m/s',
        '  Still air.',
        '  Source: NIST Special Publication 811, Guide for the Use of the International System of Units, Appendix B',
        '  Source: Common practice, no source',
        '  where',
        '    d = 3',
        '      gives one: 1',
        '      Source: NIST Special Publication 811, Guide for the Use of the International System of Units, Appendix B',
      ].join('\n'),
    )
  })
})
