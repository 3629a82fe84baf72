import { describe, expect, it } from 'vitest'
import { benchLocks } from '@/storage/bench-locks'

/** Web Locks as the standard has them, as far as the bench asks: one holder a name, `ifAvailable`, `steal`. */
function standInLocks(): LockManager {
  const holders = new Map<string, { lose: (error: Error) => void }>()
  const request = (name: string, options: LockOptions, granted: (lock: Lock | null) => unknown) => {
    if (holders.has(name) && options.ifAvailable) return Promise.resolve(granted(null))
    holders.get(name)?.lose(new DOMException('stolen', 'AbortError'))
    return new Promise((done, lose) => {
      const holder = { lose }
      holders.set(name, holder)
      void Promise.resolve(granted({ name, mode: 'exclusive' })).then((value) => {
        if (holders.get(name) === holder) holders.delete(name)
        done(value)
      })
    })
  }
  return { request, query: () => Promise.resolve({}) } as unknown as LockManager
}

const never = () => {
  throw new Error('nobody took over')
}

describe('a bench', () => {
  it('is one tab’s at a time, and free again when that tab lets go', async () => {
    const locks = standInLocks()
    const [here, there] = [benchLocks('grainwright-shop', locks), benchLocks('grainwright-shop', locks)]
    const held = await here.hold('job', never)
    expect(held).toMatchObject({ guarded: true })
    expect(await there.hold('job', never)).toBeUndefined()
    held!.release()
    await new Promise((go) => setTimeout(go, 0))
    expect(await there.hold('job', never)).toMatchObject({ guarded: true })
  })

  it('can be taken over, and the other tab hears of it', async () => {
    const locks = standInLocks()
    const heard: string[] = []
    await benchLocks('grainwright-shop', locks).hold('job', () => heard.push('lost'))
    expect(await benchLocks('grainwright-shop', locks).hold('job', never, 'take over')).toMatchObject({ guarded: true })
    await new Promise((go) => setTimeout(go, 0))
    expect(heard).toEqual(['lost'])
  })

  it('of one job, or of the demo shop, does not keep from another', async () => {
    const locks = standInLocks()
    await benchLocks('grainwright-shop', locks).hold('job', never)
    expect(await benchLocks('grainwright-shop', locks).hold('other job', never)).toMatchObject({ guarded: true })
    expect(await benchLocks('grainwright-demo', locks).hold('job', never)).toMatchObject({ guarded: true })
  })

  it('works without locks and says that nothing guards it', async () => {
    expect(await benchLocks('grainwright-shop', null as unknown as LockManager).hold('job', never)).toMatchObject({
      guarded: false,
    })
  })
})
