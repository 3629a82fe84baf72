/** The first start on a device: an empty shop or the demo shop, kept in separate databases. */
import { useState } from 'react'
import { Button } from '../controls/button'
import { Status } from '../controls/status'
import { NameMark } from '../app/name-mark'
import { useApp } from '../app/use-app'
import look from './start-page.module.css'

export function StartPage() {
  const start = useApp((s) => s.start)
  const [isFilling, setFilling] = useState(false)
  const fill = () => {
    if (isFilling) return
    setFilling(true)
    void start('demo').finally(() => setFilling(false))
  }
  return (
    <main className={look.page}>
      <title>Grainwright</title>
      <p className={look.name}>
        <NameMark /> Grainwright
      </p>
      <h1>Plan the arrow, build it on the number, build it again.</h1>
      <p>
        For the shop that makes heavy hunting arrows to order: the call, the sheet, the bench, and the same arrow years
        later. Everything stays on this device.
      </p>
      <ul className={look.ways}>
        <li>
          <Button kind="primary" onClick={() => void start('shop')}>
            Open my shop
          </Button>
          <p>Empty at first. Parts can be typed in as an arrow needs them.</p>
        </li>
        <li>
          <Button onClick={fill}>Look around the demo shop</Button>
          <p>An invented shop with parts, clients and orders under way. It never mixes with your own records.</p>
          <Status>
            {isFilling ? 'Stocking the shelf and telling its orders; the first time this takes some seconds.' : ''}
          </Status>
        </li>
      </ul>
    </main>
  )
}
