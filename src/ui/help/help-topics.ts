/** The pages that the help tells about, in the order of a job. */
export const HELP_TOPICS = ['jobs', 'call', 'sheet', 'bench', 'send', 'kit', 'book', 'parts', 'shop'] as const
export type HelpTopic = (typeof HELP_TOPICS)[number]
