import type { Seal } from '../../spec/index.js'
import type { CueWords } from '../cueWords.js'
import { capitalize } from '../phrases.js'
import { cardWords } from './card.js'
import { countFeminine } from './speech.js'
import { join } from './words.js'

/** The seals that come in pieces; all are feminine. Sealants are not counted. */
const SEAL_PLURALS: Readonly<Record<Seal['kind'], string | undefined>> = {
  'crush washer': 'arandelas de sellado',
  'bonded seal': 'arandelas metal-caucho',
  gasket: 'juntas planas',
  'o-ring': 'juntas tóricas',
  'thread sealant': undefined,
  'liquid gasket': undefined,
  none: undefined,
  'not stated': undefined,
}

/** `dos juntas tóricas`; `kind` is the word of the card. */
function countSeals(count: number, kind: string): string {
  const [key] = Object.entries(cardWords.seals).find(([, word]) => word === kind) ?? []
  const plural = SEAL_PLURALS[key as Seal['kind']]
  return plural === undefined ? kind : `${countFeminine(count)} ${count === 1 ? kind : plural}`
}

/** The cue sheet in Spanish. */
export const cueWords: CueWords = {
  title: 'Guion de rodaje',
  cut: 'Corte: la espera no se filma.',
  scenes: {
    opening: 'Apertura',
    interval: 'Cada cuánto',
    tools: 'Herramientas, aceite y juntas',
    variants: 'Otras variantes',
    ready: 'Preparar la máquina',
    open: 'abrir y drenar',
    inside: 'inspeccionar y cerrar',
    fill: 'llenar',
    check: 'Buscar fugas',
    run: 'Poner en marcha y volver a comprobar',
    closing: 'Cierre',
  },
  shots: {
    opening: 'La máquina entera, con su manual al lado. Entra quien presenta.',
    interval: 'El horómetro, en primer plano; luego la página del manual con el intervalo.',
    tools: 'Herramientas, aceite y juntas nuevas sobre un paño limpio, en orden de uso.',
    variants: 'La placa de la máquina, en primer plano.',
    closing: 'Quien presenta, junto a la máquina terminada.',
  },
  once: {
    'first crack': 'primer aflojado: una sola oportunidad',
    'first oil': 'primer aceite: una sola oportunidad',
    magnet: 'imán, antes de limpiarlo: una sola oportunidad',
  },
  labels: {
    show: 'Mostrar',
    say: 'Decir',
    screen: 'En pantalla',
    hold: 'Mantener en pantalla',
    setting: 'ajuste',
    stopAt: 'Parar el trabajo por encima de',
    scene: 'Escena',
    time: 'Tiempo de locución',
    missing: 'No está en el manual o no se sabe',
  },
  headings: {
    scenes: 'Escenas',
    filming: 'Orden de rodaje',
    anyTime: 'Antes del trabajo, con la máquina limpia',
    inOrder: 'Durante el trabajo, en este orden; las tomas marcadas no se pueden repetir',
    afterwards: 'Después del trabajo',
  },
  authority: [
    'El manual de la máquina y las normas locales tienen prioridad sobre esta película.',
    'Los trabajos que exigen licencia son solo para quien la tiene.',
  ],
  closing: ['Antes del próximo recorrido, mirar otra vez debajo de la máquina: debe estar seca.'],
  opening: ({ machine, variant, work }) => {
    const jobs = work.map(({ service, parts }) => `${service} en ${join(parts, 'y')}`)
    return `Esta es la máquina ${machine}${variant === undefined ? '' : `, variante ${variant}`}.${jobs.length === 0 ? '' : ` El trabajo: ${join(jobs, 'y')}.`}`
  },
  place: ({ part, variant }) =>
    `${capitalize(part)}${variant === undefined ? '' : `, datos de la variante ${variant}`}.`,
  interval: ({ service, limits }) =>
    limits.length === 0
      ? `${capitalize(service)}: no se sabe el intervalo. Ver el manual.`
      : `${capitalize(service)}: cada ${join(limits, 'o')}${limits.length > 1 ? ', lo que ocurra primero' : ''}.`,
  tools: (names) => (names.length === 0 ? '' : `Hacen falta estas herramientas: ${join(names, 'y')}.`),
  oil: ({ part, volume, oil }) =>
    volume === undefined
      ? `${capitalize(part)}: lleva ${oil ?? 'el aceite que indica el manual'}; la cantidad no se indica aquí.`
      : `${capitalize(part)}: lleva ${volume} de ${oil ?? 'aceite según el manual'}.`,
  seals: (seals) =>
    seals.length === 0
      ? ''
      : `Tener preparado: ${join(
          seals.map(({ count, kind }) => countSeals(count, kind)),
          'y',
        )}.`,
  figure: (role) => cardWords.roles[role].toLowerCase(),
  otherVariant: ({ variant, role, gearcase, part, value }) => {
    const places = [gearcase, part].filter((place) => place !== undefined)
    return `Variante ${variant}${places.map((place) => `, ${place}`).join('')}: ${role}, ${value}.`
  },
  later: (time) => `${time} después`,
}
