/** Bot API, "sendMessage": a text has 1 to 4096 characters. */
export const TEXT_MAX = 4096

/** A long text in parts that can be sent, cut at line ends where there are any, else at word ends. */
export const parts = (text: string, max = TEXT_MAX): string[] => {
  const list: string[] = []
  let rest = text.trim()
  while (rest.length > max) {
    const head = rest.slice(0, max + 1)
    const line = head.lastIndexOf('\n')
    const word = head.search(/\s\S*$/)
    // Without either, cut between whole characters: half an emoji is refused.
    const hard = /[\uD800-\uDBFF]/.test(rest[max - 1] ?? '') ? max - 1 : max
    const at = line > 0 ? line : word > 0 ? word : hard
    list.push(rest.slice(0, at).trimEnd())
    rest = rest.slice(at).trimStart()
  }
  if (rest) list.push(rest)
  return list
}
