/** Out of the shop to the start page; what could not be saved is not left behind unasked. */
import { useState } from 'react'
import { useApp } from '../app/use-app'
import { Button } from '../controls/button'
import { Dialog } from '../controls/dialog'
import { notSavedCount } from '../words/not-saved-words'

export function CloseShop() {
  const book = useApp((s) => s.book)
  const leave = useApp((s) => s.leave)
  const saveAgain = useApp((s) => s.saveAgain)
  const waiting = useApp((s) => s.notSaved?.commands.length ?? 0)
  const [isAsked, setIsAsked] = useState(false)
  return (
    <>
      <Button onClick={() => (waiting === 0 ? leave() : setIsAsked(true))}>
        {book === 'demo' ? 'Leave the demo shop' : 'Close my shop'}
      </Button>
      {isAsked && waiting > 0 ? (
        <Dialog
          title={notSavedCount(waiting)}
          onClose={() => setIsAsked(false)}
          actions={
            <>
              <Button
                kind="primary"
                onClick={() => void saveAgain().then((isSaved) => (isSaved ? setIsAsked(false) : undefined))}
              >
                Save again
              </Button>
              <Button onClick={leave}>Close and lose it</Button>
              <Button onClick={() => setIsAsked(false)}>Stay</Button>
            </>
          }
        >
          <p>
            It stands nowhere but in this page. Save it again, or copy it from the foot of the page, before you close.
          </p>
        </Dialog>
      ) : null}
    </>
  )
}
