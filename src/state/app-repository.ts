/** The repository with this app's own views. */
import type { ArrowView, JobView } from '../domain/job/job-view'
import type { Repository } from '../domain/ports'
import type { LotView } from '../domain/stock/lot-view'

export type AppRepository = Repository<JobView, ArrowView, LotView>
export type BookName = 'shop' | 'demo'
