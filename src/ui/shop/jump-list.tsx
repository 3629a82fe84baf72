/** Where things stand on a page that is long: each subject one tap away, in the order of the page. */
import { Button } from '../controls/button'
import look from './shop.module.css'

/** The heading takes the focus, so that the keyboard and a reader go on from there. */
function jumpTo(title: string) {
  const heading = [...document.querySelectorAll<HTMLElement>('main h2')].find((each) => each.textContent === title)
  if (heading === undefined) return
  heading.tabIndex = -1
  heading.focus({ preventScroll: true })
  heading.scrollIntoView()
}

export const JumpList = ({ titles }: { titles: readonly string[] }) => (
  <nav aria-label="On this page">
    <ul className={look.jumps}>
      {titles.map((title) => (
        <li key={title}>
          <Button kind="text" onClick={() => jumpTo(title)}>
            {title}
          </Button>
        </li>
      ))}
    </ul>
  </nav>
)
