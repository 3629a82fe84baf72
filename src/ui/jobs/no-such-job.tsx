/** An address that names no job of this book. */
import { Link } from 'wouter'
import { Page } from '../app/page'
import { EmptyState } from '../controls/empty-state'

export const NoSuchJob = () => (
  <Page title="No such job" tab="No such job">
    <EmptyState title="This book has no job at this address" action={<Link to="/jobs">All jobs</Link>}>
      It may be in the other shop, or in a backup that is not here.
    </EmptyState>
  </Page>
)
