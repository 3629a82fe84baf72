/** The title block at the foot of a sheet, as on a drawing: shop, print, record, version, hash, page n of m. */
import look from './title-block.module.css'

export interface TitleBlockFacts {
  readonly shop: string
  /** The job's number and what it is for. */
  readonly job: string
  /** The record's code: *4J7K-Q2MB*. */
  readonly record: string
  readonly version: number | null
  /** First letters of the record's hash. */
  readonly hash: string | null
  /** The day the record was made, in words. */
  readonly made: string
}

const NONE = 'none yet' // of a job that was never frozen

interface TitleBlockProps {
  title: string
  facts: TitleBlockFacts
  page: number
  of: number
}

export const TitleBlock = ({ title, facts, page, of }: TitleBlockProps) => (
  <footer className={look.block} data-label="">
    <div className={look.shop}>
      <b>{facts.shop}</b>
      <span>{title}</span>
    </div>
    <dl className={look.facts}>
      <Fact name="Job" value={facts.job} />
      <Fact name="Record" value={facts.record} />
      <Fact name="Version" value={`${facts.version ?? NONE}, ${facts.made}`} />
      <Fact name="Hash" value={facts.hash ?? NONE} />
      <Fact name="Page" value={`${page} of ${of}`} />
    </dl>
  </footer>
)

const Fact = ({ name, value }: { name: string; value: string }) => (
  <div className={look.fact}>
    <dt>{name}</dt>
    <dd>{value}</dd>
  </div>
)
