/** Work of one key in the order it was asked for, one at a time; keys don't wait for one another. */
export const makeQueue = () => {
  const tails = new Map<string, Promise<unknown>>()
  return <T>(key: string, work: () => Promise<T>): Promise<T> => {
    const before = tails.get(key) ?? Promise.resolve()
    const mine = before.then(work, work)
    const tail = mine.then(
      () => undefined,
      () => undefined,
    )
    tails.set(key, tail)
    void tail.then(() => {
      if (tails.get(key) === tail) tails.delete(key)
    })
    return mine
  }
}
