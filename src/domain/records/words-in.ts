/** The words of a text as a search compares them: lower case, without accents, split at what is no letter and no digit. */
export const wordsIn = (text: string): readonly string[] =>
  text
    .normalize('NFD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
    .split(/[^\p{Letter}\p{Number}.]+/u)
    .map((word) => word.replaceAll(/^\.+|\.+$/g, ''))
    .filter((word) => word !== '')
