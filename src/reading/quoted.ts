// inches are written with the same mark: what opens stands before a letter or a number, behind a space
const OPENS = /(?<=^|\s)["“](?=[\p{L}\d])/u
const CLOSES = /["”]/
/** Fewer words in marks are a name or a joke's point. */
const LEAST_WORDS = 4

/** True where a message is somebody else's words in quotation marks, with something said of them before or behind. */
export const isQuoted = (text: string): boolean => {
  // most messages have no such mark
  if (!text.includes('"') && !text.includes('“')) return false
  const from = text.search(OPENS)
  if (from < 0) return false
  const inside = text.slice(from + 1)
  const length = inside.search(CLOSES)
  if (length < 0) return false
  const words = (part: string): number => part.split(/\s+/).filter(w => /\p{L}|\d/u.test(w)).length
  const outside = words(text.slice(0, from)) + words(inside.slice(length + 1))
  return words(inside.slice(0, length)) >= LEAST_WORDS && outside >= (from === text.search(/\S/) ? 3 : 2)
}
