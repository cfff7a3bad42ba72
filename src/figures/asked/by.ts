import type { Message } from '../../book/questions.ts'
import { told } from './refusal.ts'

/**
 * The formulas that an answer may rest on; their names and sources are words of the answer. Which of them are from memory is told
 * there too.
 */
export type Formula =
  | 'formula-fused'
  | 'formula-balance'
  | 'formula-chained'
  | 'formula-muck-holmes'
  | 'formula-eight-hundred'
  | 'formula-measured'
  | 'formula-survey'
  | 'formula-richard'
  | 'formula-ruppel'
  | 'formula-top'
  | 'formula-bastiman'
  | 'formula-face-rate'
  | 'formula-face-least'
  | 'formula-arc'
  | 'formula-tires'
  | 'formula-second-sheet'
  | 'formula-sizing'
  | 'formula-layers'
  | 'formula-boxes'
  | 'formula-three-weeks'
  | 'formula-walks'

/** One line that names the formulas and their sources. */
export const by = (...formulas: Formula[]): Message =>
  told('how-by', { formulas: told('join', { list: formulas.map(f => told(f)), by: 'semicolon' }) })
