/**
 * Serves the app from a copy of the whole build, so that it opens with the network off. A new build is fetched in full
 * beside the old one and waits until a tab says that it may take over; the build before it stays, for tabs still on it.
 */
declare const __RELEASE__: { readonly version: string; readonly files: readonly string[] }

const worker = self as unknown as ServiceWorkerGlobalScope
const PREFIX = 'grainwright-'
const { version, files } = __RELEASE__
const CURRENT = PREFIX + version
const BUILDS_KEPT = 2

worker.addEventListener('install', (event) => event.waitUntil(fetchBuild()))
worker.addEventListener('activate', (event) => event.waitUntil(forgetOldBuilds().then(() => worker.clients.claim())))
worker.addEventListener('message', (event) => {
  if (event.data === 'take over') event.waitUntil(worker.skipWaiting())
})
worker.addEventListener('fetch', (event) => {
  const { request } = event
  if (request.method === 'GET' && new URL(request.url).origin === worker.location.origin) {
    event.respondWith(request.mode === 'navigate' ? page(request) : file(request))
  }
})

async function fetchBuild() {
  const cache = await caches.open(CURRENT)
  await cache.addAll(files.map((name) => new Request(name, { cache: 'reload' })))
}

async function forgetOldBuilds() {
  const builds = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CURRENT)
  await Promise.all(builds.slice(0, 1 - BUILDS_KEPT).map((name) => caches.delete(name)))
}

async function page(request: Request) {
  return (await (await caches.open(CURRENT)).match('index.html')) ?? fetch(request)
}

// A server's Vary header must not hide a file that is here: the page would stay blank offline.
async function file(request: Request) {
  return (await caches.match(request, { ignoreVary: true })) ?? fetch(request)
}
