/** Emits sw.js with the list of every file of the build, so that the app opens with the network off. Decision 0003. */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Plugin, transformWithOxc } from 'vite'

const WORKER = 'workers/service-worker.ts'

export function precache(): Plugin {
  return {
    name: 'precache',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    generateBundle: {
      order: 'post',
      async handler(_options, bundle) {
        const { root, publicDir } = this.environment.config
        const content = new Map<string, string | Uint8Array>()
        for (const name of readdirSync(publicDir)) content.set(name, readFileSync(join(publicDir, name)))
        for (const [name, file] of Object.entries(bundle))
          content.set(name, file.type === 'chunk' ? file.code : file.source)
        const files = [...content.keys()].filter((name) => !name.startsWith('.')).sort()
        const code = readFileSync(join(root, WORKER), 'utf8')
        const hash = createHash('sha256').update(code)
        for (const name of files) hash.update(name).update(content.get(name)!)
        const release = JSON.stringify({ version: hash.digest('hex').slice(0, 12), files })
        const { code: script } = await transformWithOxc(code, WORKER, { define: { __RELEASE__: release } })
        this.emitFile({ type: 'asset', fileName: 'sw.js', source: script })
      },
    },
  }
}
