import type { HelpTopic } from './help-topics'
import { HELP_TOPICS } from './help-topics'

/** The part of the help that is about the page of an address; of a job's front page, the jobs. */
export function helpTopicOf(path: string): HelpTopic {
  const [, place, , stage] = path.split('/')
  const named = HELP_TOPICS.find((topic) => topic === (place === 'job' ? stage : place))
  return named ?? 'jobs'
}
