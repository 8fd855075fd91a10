import type { CueWords } from '../cueWords.js'
import { capitalize, join } from '../phrases.js'
import { cardWords } from './card.js'
import { speechWords } from './speech.js'

/** The cue sheet in English. */
export const cueWords: CueWords = {
  title: 'Cue sheet',
  cut: 'Cut: the wait is not filmed.',
  scenes: {
    opening: 'Opening',
    interval: 'How often',
    tools: 'Tools, oil and seals',
    variants: 'Other variants',
    ready: 'Make the machine ready',
    open: 'open and drain',
    inside: 'inspect and close',
    fill: 'fill',
    check: 'Check for leaks',
    run: 'Run and check again',
    closing: 'Closing',
  },
  shots: {
    opening: 'The whole machine, with its manual next to it. The presenter steps in.',
    interval: 'The hour meter, close up, then the page of the manual with the interval.',
    tools: 'Tools, oil and new seals on a clean cloth, in the order of use.',
    variants: "The machine's plate, close up.",
    closing: 'The presenter next to the finished machine.',
  },
  once: {
    'first crack': 'first crack: one chance',
    'first oil': 'first oil: one chance',
    magnet: 'magnet, before it is wiped: one chance',
  },
  labels: {
    show: 'Show',
    say: 'Say',
    screen: 'On screen',
    hold: 'Hold on screen',
    setting: 'set',
    stopAt: 'Stop the work above',
    scene: 'Scene',
    time: 'Speaking time',
    missing: 'Not in the manual, or not known',
  },
  headings: {
    scenes: 'Scenes',
    filming: 'Filming order',
    anyTime: 'Before the work, while the machine is clean',
    inOrder: 'During the work, in this order; marked shots cannot be repeated',
    afterwards: 'After the work',
  },
  authority: [
    "The machine's own manual and the local codes come before this film.",
    'Leave work that needs a licence to people who hold one.',
  ],
  closing: ['Before the next drive, look under the machine once more: it must be dry.'],
  opening: ({ machine, variant, work }) => {
    const jobs = work.map(({ service, parts }) => `${service} of the ${join(parts, 'and')}`)
    return `This is ${machine}${variant === undefined ? '' : `, the ${variant}`}.${jobs.length === 0 ? '' : ` The job: ${join(jobs, 'and')}.`}`
  },
  place: ({ part, variant }) =>
    `${capitalize(part)}${variant === undefined ? '' : `, figures for the ${variant}`}.`,
  interval: ({ service, limits }) =>
    limits.length === 0
      ? `${capitalize(service)}: the interval is not known. See the manual.`
      : `${capitalize(service)}: every ${join(limits, 'or')}${limits.length > 1 ? ', whichever comes first' : ''}.`,
  tools: (names) => (names.length === 0 ? '' : `You need these tools: ${join(names, 'and')}.`),
  oil: ({ part, volume, oil }) =>
    volume === undefined
      ? `The ${part} takes ${oil ?? 'the oil that the manual names'}; the quantity is not stated here.`
      : `The ${part} takes ${volume} of ${oil ?? 'the oil that the manual names'}.`,
  seals: (seals) =>
    seals.length === 0
      ? ''
      : `Have these seals ready: ${join(
          seals.map(({ count, kind }) =>
            /sealant|liquid/.test(kind)
              ? kind
              : `${speechWords.numeral(String(count))} ${kind}${count === 1 ? '' : kind.endsWith('s') ? '' : 's'}`,
          ),
          'and',
        )}.`,
  figure: (role) => cardWords.roles[role].toLowerCase(),
  otherVariant: ({ variant, role, gearcase, part, value }) => {
    const places = [part, gearcase].filter((place) => place !== undefined)
    return `On the ${variant}, the ${role}${places.map((place) => ` of the ${place}`).join('')} is ${value}.`
  },
  later: (time) => `${time} later`,
}
