/**
 * The whole book as one page of HTML for the years: every job to read, and the records themselves at its end. It holds no
 * script, and its own policy lets none run and nothing be fetched.
 */
import type { AppRepository } from '../../state/app-repository'
import { archiveJobs } from '../../state/archive-jobs'
import { ARCHIVE_WORDS, archiveIntroWords } from '../words/archive-page-words'
import { showDayAndYear } from '../words/dates'
import { jobTitle } from '../words/job-words'
import { escaped, tag } from './html'
import { anchorOf, jobInArchive } from './job-in-archive'

const POLICY = "default-src 'none'; style-src 'unsafe-inline'"
const STYLE = `
  :root { color-scheme: light dark; }
  body { font: 15px/1.45 system-ui, sans-serif; max-width: 60rem; margin: 2rem auto; padding: 0 1rem; }
  table { border-collapse: collapse; margin: 0.75rem 0; width: 100%; }
  caption { text-align: start; padding-block: 0.25rem; }
  th, td { text-align: start; vertical-align: baseline; padding: 0.2rem 1rem 0.2rem 0; border-bottom: 1px solid; font-weight: 400; }
  thead th { font-weight: 700; }
  section { border-top: 2px solid; margin-top: 2rem; }
  pre { overflow-x: auto; font-size: 12px; }
  @media print { pre { display: none; } section { break-before: page; } }
`

/**
 * @param at the moment it is made
 * @param progress told how many records have been told of, and then how many more were written: roughly twice the book in all
 */
export async function bookArchive(
  repository: AppRepository,
  shop: string,
  at: string,
  progress: (records: number) => void = () => {},
): Promise<Blob> {
  const links: string[] = []
  const jobs: string[] = []
  let builds = 0
  let told = 0
  for await (const each of archiveJobs(repository)) {
    const { job, client } = each.open
    links.push(`<li><a href="#${escaped(anchorOf(job.code))}">${escaped(jobTitle(job, client?.['name']))}</a></li>`)
    jobs.push(jobInArchive(each))
    builds += each.builds.length
    progress((told += each.open.events.length))
  }
  const records: string[] = []
  const decoder = new TextDecoder()
  await repository.archive.backUp(
    at,
    (bytes) => {
      records.push(escaped(decoder.decode(bytes, { stream: true })))
    },
    (written) => progress(told + written),
  )
  records.push(escaped(decoder.decode()))
  const title = `The book of ${shop === '' ? 'the shop' : shop}`
  return new Blob(
    [
      `<!doctype html>\n<html lang="en"><head><meta charset="utf-8">`,
      `<meta name="viewport" content="width=device-width"><meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
      tag('title', title),
      `<style>${STYLE}</style></head><body><main>`,
      tag('h1', title),
      tag('p', archiveIntroWords(jobs.length, builds, showDayAndYear(at.slice(0, 10)))),
      tag('p', ARCHIVE_WORDS.personal),
      `<nav>${tag('h2', ARCHIVE_WORDS.jobs)}<ol>${links.join('')}</ol></nav>\n`,
      ...jobs,
      `<section id="records">${tag('h2', ARCHIVE_WORDS.records)}${tag('p', ARCHIVE_WORDS.recordsNote)}`,
      // The parser drops the first line feed after the tag, so that the text is the backup to the byte.
      `<pre>\n`,
      ...records,
      `</pre></section></main></body></html>\n`,
    ],
    { type: 'text/html' },
  )
}
