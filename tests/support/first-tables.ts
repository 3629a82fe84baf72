/** The tables and indexes of a book as its first number stood. */
export const FIRST_TABLES = {
  facts: 'hash,[kind+subject],*lots',
  events: 'hash,[log+seq],job,[job+arrow],command,*lots',
  personal: 'hash',
  photos: 'hash',
  meta: 'key',
  forgotten: 'hash',
  staged: 'hash,kind',
  heads: '[kind+subject],kind,*words,*standsOn',
  jobView: 'id,updated,*words,*standsOn,*lots',
  arrowView: 'id,job,lot',
  lotView: 'id',
}
