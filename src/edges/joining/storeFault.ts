/** A store that can't write: the message is not safe, so whoever brought it must keep it. (Known by its shape: edges don't import one another.) */
export const isStoreFault = (error: unknown): error is Error & { code: string } =>
  error instanceof Error && error.name === 'StoreFault' && (error as Error & { code?: string }).code !== 'entry-refused'
