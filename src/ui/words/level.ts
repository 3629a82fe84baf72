/** How loud something is said. `note`: worth knowing. `look`: check it. `stop`: not like this. */
export type Level = 'note' | 'look' | 'stop'
