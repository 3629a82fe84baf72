/** What is wrong with the time of readings off the paper card. */
export function paperTimeWords(problem: 'empty' | 'not a time' | 'to come', typed: string): string {
  switch (problem) {
    case 'empty':
      return 'When were they read? The card has the time beside each step, such as 14:05.'
    case 'not a time':
      return `“${typed}” is no time of day. Write it as 14:05 or 2:05 pm.`
    case 'to come':
      return `${typed} is still to come. Is it another day?`
  }
}
