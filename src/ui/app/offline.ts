/** Registers the service worker of the built app, and says when a newer build is ready. */

/** Takes the newer build and reloads this tab; called only when a person accepts the offer. */
export type TakeUpdate = () => void

/**
 * @param onOffer called each time a newer build has been fetched and waits; never on a first visit
 * @returns whether the app is kept for use without a network: not in a browser that withholds service workers, as over
 * plain http from another device, and not while developing
 */
export async function watchForUpdate(onOffer: (take: TakeUpdate) => void): Promise<boolean> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return false
  const registration = await navigator.serviceWorker.register(new URL('sw.js', document.baseURI)).catch(() => undefined)
  if (registration === undefined) return false
  const offer = () => {
    const waiting = registration.waiting
    if (waiting !== null && navigator.serviceWorker.controller !== null) onOffer(() => takeOver(waiting))
  }
  const follow = () => registration.installing?.addEventListener('statechange', offer)
  offer()
  follow() // it may be on its way already, fetched for another tab or while this page was still opening its book
  registration.addEventListener('updatefound', follow)
  // The browser looks by itself only when it finds the time; without a network there is nothing to look at.
  void registration.update().catch(() => undefined)
  return true
}

function takeOver(waiting: ServiceWorker) {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
  waiting.postMessage('take over')
}
