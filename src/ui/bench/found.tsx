/** Findings at the bench; they are rare, and their sentences are many. */
import type { Finding } from '../../core/finding'
import { FindingList } from '../controls/finding-list'

export default function Found({ findings }: { findings: readonly Finding[] }) {
  return <FindingList findings={findings} />
}
