import { describe, expect, it } from 'vitest'
import { choreIn } from '../../src/reading/wish/chore.ts'
import { wishIn } from '../../src/reading/wish/wish.ts'

// What each sentence asks for is checked against what a farmer would mean by it, written down before the patterns were.

const DAY = '2026-06-01'
const said = (text: string): string => {
  const w = wishIn(text, DAY)
  if (!w) return ''
  return w.kind === 'list' ? 'list' : `${w.who ? `${w.who}: ` : ''}${w.sets.map(s => `${s.name}=${s.value}`).join(' ')}`
}

const TABLE: [string, ...string[]][] = [
  [
    'checkDays=5',
    'check the covers every 5 days',
    'Please check the covers every five days.',
    'covers get checked every 5 days',
    'cover checks every 5 days',
    'set the check interval to 5 days',
    'revisar las tapas cada 5 días',
    'revisen los plásticos cada cinco dias',
  ],
  ['checkDays=2', 'check the covers every other day', 'revisen las tapas cada tercer día'],
  ['checkDays=7', 'walk the covers weekly', 'walk the covers once a week', 'checar los plásticos una vez por semana'],
  ['checkDays=4', 'we check the covers twice a week'],
  ['checkDays=1', 'check the piles daily', 'revisar las pilas todos los días'],
  [
    'morningHour=05:30',
    'send the morning report at 5:30',
    'morning summary at half past five',
    'can you send the morning summary at 5:30 am?',
    'el resumen de la mañana a las 5 y media',
    'manda el resumen de la mañana a las 5:30',
  ],
  ['eveningHour=20:00', 'evening report at 8', 'move the evening summary to 8 pm', 'el resumen de la tarde a las 8'],
  ['weeklyHour=18:00 weeklyDay=6', 'weekly report on saturdays at 6 pm', 'resumen semanal los sábados a las 6'],
  ['weeklyDay=5', 'send the weekly on fridays', 'el resumen semanal los viernes'],
  [
    'quietFrom=21:00 quietTo=05:00',
    'no messages between 9pm and 5am',
    'no messages from nine to five',
    'quiet hours 9 pm to 5 am',
    'no texts between 9 and 5',
    'nada de mensajes entre las 9 y las 5',
    'horas de silencio de 9 de la noche a 5 de la mañana',
  ],
  ['me: quietFrom=20:00 quietTo=06:00', "don't text me between 8 and 6", 'no me mandes mensajes de 8 a 6'],
  ['quietFrom=20:00', 'no messages after 8pm'],
  ['quietFrom=00:00 quietTo=00:00', 'no quiet hours', 'sin horas de silencio'],
  [
    'nudgesPerDay=2',
    'no more than 2 nudges a day',
    'at most two nudges per day',
    'nudge us at most twice a day',
    'no más de dos avisos al día',
  ],
  ['nudgesPerDay=0', "don't nag", 'no nudges', 'sin avisos'],
  ['lat=43.1 lon=-89.4', 'we are at 43.1, -89.4', 'the farm is at 43.1 N, 89.4 W', 'lat 43.1 lon -89.4', 'estamos en 43.1, -89.4'],
  [
    'freezeDay=12-01',
    'ground freezes around dec 1',
    'the ground usually freezes about December 1st',
    'el suelo se congela como el 1 de diciembre',
    'freeze day dec 1',
  ],
  ['thawDay=03-25', 'the ground thaws around march 25', 'el suelo se deshiela como el 25 de marzo'],
  [
    'emptySummaries=false',
    'no summary when there is nothing to say',
    "don't send a report if there's nothing new",
    'sin resumen si no hay nada que decir',
  ],
  ['emptySummaries=true', 'send the morning summary even when there is nothing', 'manda el resumen aunque no haya nada'],
  ['waitDays=45', 'wait 45 days before opening', 'waiting time 45 days', 'esperar 45 días antes de abrir'],
  ['waitDays=42', 'leave the piles shut for 6 weeks'],
  [
    'walt: morning=true',
    'send walt the morning summary',
    'send the morning summary to walt',
    'give walt the morning report',
    'mándale a walt el resumen de la mañana',
  ],
  ['me: morning=true morningHour=04:45', 'send me the morning summary at 4:45'],
  [
    'me: evening=false',
    "don't send me the evening one",
    'stop sending me the evening summary',
    "i don't want the evening report",
    'ya no me mandes el resumen de la tarde',
  ],
  ['walt: morning=false evening=false weekly=false', 'no more summaries for walt'],
  ['evening=false', 'no evening summary', 'sin resumen de la tarde'],
  ['crew: morning=false', "don't send the group the morning summary"],
  ['me: lang=es', 'spanish please', 'en español por favor', 'háblame en español', 'answer me in spanish'],
  ['walt: lang=es', 'walt speaks spanish', 'talk to walt in spanish'],
  ['crew: lang=es', 'write to the group in spanish', 'al grupo en español'],
  ['askHour=13:00', 'ask at 1 pm'],
  ['list', 'settings', 'what are the settings?', 'my settings', 'ajustes', '¿cuáles son los ajustes?', 'muéstrame los ajustes'],
]

describe('a wish', () => {
  it.each(TABLE.flatMap(([wanted, ...texts]) => texts.map(t => [t, wanted])))('%s', (text, wanted) => {
    expect(said(text!)).toBe(wanted)
  })
  it.each([
    'checked the covers every day this week',
    'check the covers',
    'check the covers every tuesday',
    'ground froze last night',
    'the ground freezes tonight',
    'freeze april 3',
    'we are at 43 ft',
    'lane is at 43.1, 20 left',
    'wait 3 days',
    'no messages in the morning',
    'send walt over to north at 6',
    'walt wants north covered',
    'report from north: all good',
    'morning report',
    'should we check the covers every day?',
    'put 7 loads corn on north every morning',
    'the spanish guy was here',
    'leave it shut 3 days',
    'no more loads after 9',
    'weekly walk done',
  ])('is not in "%s"', text => {
    expect(said(text)).toBe('')
  })
})

const NOW = { day: DAY, hour: 8.5 }
const chore = (text: string): string => {
  const c = choreIn(text, NOW)
  if (!c) return ''
  if (c.kind === 'snooze') return `snooze ${c.date ? `${c.date.future} ${c.date.time ?? ''}` : ''}`.trim()
  if (c.kind === 'cancel') return `cancel ${c.all ? 'all' : (c.number ?? c.about ?? '')}`.trim()
  if (c.kind === 'filled') return `filled ${c.pile ?? ''}`.trim()
  return c.kind === 'done' ? `done ${c.about ?? ''}`.trim() : c.kind
}

const CHORES: [string, ...string[]][] = [
  ['list', 'what reminders do I have', 'reminders', 'any reminders?', 'qué recordatorios tengo', 'mis recordatorios'],
  [
    'cancel vet',
    'cancel the reminder about the vet',
    'cancel the vet reminder',
    'stop reminding me about the vet',
    "don't remind me about the vet anymore",
  ],
  ['cancel veterinario', 'cancela el recordatorio del veterinario', 'ya no me recuerdes lo del veterinario'],
  ['cancel 2', 'cancel reminder 2', 'borra el recordatorio 2'],
  ['cancel all', 'delete all reminders'],
  ['done', 'done', "it's done", 'already did it', 'listo', 'ya quedó', 'hecho'],
  ['done plastic', 'done with the plastic'],
  ['snooze', 'snooze', 'later', 'not now', 'remind me later', 'más tarde', 'al rato'],
  ['snooze 2026-06-01 09:30', 'in an hour', 'snooze for an hour', 'en una hora'],
  ['snooze 2026-06-01 09:00', 'in half an hour', 'in 30 min', 'en media hora'],
  ['snooze 2026-06-02', 'tomorrow', 'remind me again tomorrow', 'mañana'],
  ['snooze 2026-06-02 06:00', 'tomorrow at 6', 'mañana a las 6'],
  ['snooze 2026-06-05', 'friday', 'el viernes'],
  ['filled', 'last load', 'that was the last load', "we're done chopping", 'ya fue el último viaje'],
  ['filled north', 'last load on north', 'done filling north', 'ya acabamos de llenar north'],
]

describe('a word about reminders', () => {
  it.each(CHORES.flatMap(([wanted, ...texts]) => texts.map(t => [t, wanted])))('%s', (text, wanted) => {
    expect(chore(text!)).toBe(wanted)
  })
  it.each([
    'put 7 loads on north',
    '7 loads tomorrow',
    'monday fed 9000',
    'remind me friday to order plastic',
    'cancel that',
    'no hail',
    'listen',
    'what is left',
  ])('is not in "%s"', text => {
    expect(chore(text)).toBe('')
  })
})
