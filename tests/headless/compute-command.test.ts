import { execFileSync, spawnSync } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { computeFigures } from '@/headless/compute-figures'
import { OPEN_EXAMPLE } from './open-example'

const FOLDER = 'node_modules/.cache/compute-test'
const write = (name: string, text: string) => writeFileSync(join(FOLDER, name), text)
const run = (...words: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync('node', [join(FOLDER, 'compute.js'), ...words], {
    encoding: 'utf8',
    env: { ...process.env, INIT_CWD: FOLDER },
  })
  return { status, stdout, stderr }
}

describe('the compute command, built for Node', () => {
  beforeAll(() => {
    mkdirSync(FOLDER, { recursive: true })
    const vite = ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error', '--ssr', 'headless/compute.ts']
    execFileSync('node', [...vite, '--outDir', `../${FOLDER}`], { stdio: 'pipe' })
    write('good.json', JSON.stringify([OPEN_EXAMPLE]))
    write('bad.json', JSON.stringify({ ...OPEN_EXAMPLE, lengthIn: 'long' }))
    write('broken.json', '{ "format": ')
  }, 60_000)

  it('prints the figures at full precision, and the working when it is asked for', () => {
    const { status, stdout, stderr } = run('good.json')
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
    expect(computeFigures([OPEN_EXAMPLE], false)).toEqual({ ok: true, output: JSON.parse(stdout) })
    expect(JSON.parse(run('good.json', '--working').stdout)[0].working.speed.equation).toContain('√')
  })

  it.each([
    [['bad.json'], /^lengthIn: .*string/],
    [['broken.json'], /^broken\.json: not JSON/],
    [['none.json'], /^none\.json: cannot be read/],
    [[], /^usage: npm run compute -- FILE/],
    [['good.json', 'bad.json'], /^usage/],
    [['good.json', '--fast'], /^--fast: not known/],
  ])('says what is wrong with %j and leaves with 2', (words, says) => {
    const { status, stdout, stderr } = run(...words)
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(stderr).toMatch(says)
  })
})
