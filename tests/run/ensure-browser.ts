/** Sees to it that the browser, its fonts and the PDF rasteriser are there: by apt on Debian, else says what to install. */
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'

const PACKAGES = ['chromium-headless-shell', 'fonts-liberation', 'fonts-dejavu-core', 'poppler-utils']
export const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium-headless-shell'

const works = (program: string, ...parameters: string[]) =>
  spawnSync(program, parameters, { stdio: 'ignore' }).status === 0
const installed = () =>
  existsSync(CHROMIUM) &&
  works('pdftoppm', '-v') &&
  (!works('dpkg', '--version') || works('dpkg', '-s', 'fonts-liberation', 'fonts-dejavu-core'))

/** @returns undefined when everything is there, otherwise one sentence for a person */
export function ensureBrowser(): string | undefined {
  if (installed()) return undefined
  const sudo = process.getuid?.() === 0 ? [] : ['sudo', '-n']
  const apt = (...parameters: string[]) => {
    const [program, ...rest] = [...sudo, 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', ...parameters]
    return spawnSync(program!, rest, { stdio: 'inherit' }).status === 0
  }
  if (works('apt-get', '--version') && (sudo.length === 0 || works('sudo', '-n', 'true'))) {
    console.log(`Installing ${PACKAGES.join(', ')}.`)
    if (apt('update', '-q') && apt('install', '-q', '-y', '--no-install-recommends', ...PACKAGES) && installed()) {
      return undefined
    }
  }
  return `The browser tests need a headless Chromium and pdftoppm: on Debian install ${PACKAGES.join(', ')}; elsewhere install both and set CHROMIUM to the browser's path.`
}
