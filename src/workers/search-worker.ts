/** The search's own thread. */
import { expose } from 'comlink'
import { searchDesk } from './search-desk'

expose(searchDesk())
