/** An address that leads nowhere: a mistyped link, or a record that is not in this book. */
import { Link } from 'wouter'
import { EmptyState } from '../controls/empty-state'
import { Page } from './page'

export const NotFoundPage = ({ address }: { address: string }) => (
  <Page title="No such page" tab="No such page">
    <EmptyState title="This address leads nowhere" action={<Link to="/jobs">Go to the jobs</Link>}>
      <span data-label="">{address.slice(0, 200)}</span> is none of this app’s pages. A label code can be looked up in
      the book.
    </EmptyState>
  </Page>
)
