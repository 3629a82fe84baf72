/**
 * A disk in a file, mounted through a loop device. What a program has only handed to the operating system lies in memory;
 * what was forced out lies in the file. A copy of the file is the disk as a power cut at that moment would leave it.
 */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export interface LoopDisk {
  readonly folder: string
  /** The disk as it is at this moment, mounted apart. Halt whoever writes to it first. */
  readonly cut: () => LoopDisk
  readonly remove: () => void
}

/** Why no loop disk can be made here, or undefined. */
export function noLoopDisk(): string | undefined {
  if (process.getuid?.() !== 0) return 'needs root, to mount a loop device'
  try {
    newDisk(16).remove()
    return undefined
  } catch (problem) {
    return `cannot mount a loop device here: ${String(problem).split('\n')[0]}`
  }
}

for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => process.exit(1))

/** @param size megabytes */
export function newDisk(size: number): LoopDisk {
  const home = mkdtempSync(join(tmpdir(), 'grainwright-disk-'))
  const image = join(home, 'image')
  writeFileSync(image, '')
  truncateSync(image, size * 1024 * 1024)
  run('mkfs.ext4', '-q', '-m', '0', image)
  return mounted(home, image)
}

function mounted(home: string, image: string): LoopDisk {
  const folder = mkdtempSync(join(home, 'mount-'))
  // The file system's own timer is set far off: what reaches the disk is what was forced there.
  run('mount', '-o', 'loop,commit=600', image, folder)
  const remove = () => {
    process.off('exit', remove)
    run('umount', '-l', folder)
    rmSync(home, { recursive: true, force: true })
  }
  process.on('exit', remove) // a run that is broken off leaves no disk behind
  return {
    folder,
    remove,
    cut: () => {
      const other = mkdtempSync(join(tmpdir(), 'grainwright-disk-'))
      const copy = join(other, 'image')
      run('cp', '--sparse=always', image, copy)
      return mounted(other, copy)
    },
  }
}

const run = (program: string, ...parameters: string[]) =>
  execFileSync(program, parameters, { stdio: ['ignore', 'ignore', 'pipe'] })
