import type { CueWords } from '../cueWords.js'
import { capitalize, join } from '../phrases.js'
import { cardWords } from './card.js'
import { speechWords } from './speech.js'
import { quote, SEAL_NOUNS } from './words.js'

const SEALS = Object.values(SEAL_NOUNS)

/** `deux joints toriques`, `une rondelle à écraser`; a sealant has no number. */
function writeSealCount(count: number, kind: string): string {
  const noun = SEALS.find(({ name }) => name === kind)
  if (noun === undefined || kind.startsWith('pâte')) return kind
  if (count === 1) return `${noun.gender === 'f' ? 'une' : 'un'} ${kind}`
  return `${speechWords.numeral(String(count))} ${noun.plural}`
}

/** The cue sheet in French. */
export const cueWords: CueWords = {
  title: 'Conducteur de tournage',
  cut: 'Coupe : l’attente n’est pas filmée.',
  scenes: {
    opening: 'Ouverture',
    interval: 'Fréquence',
    tools: 'Outillage, huile et joints',
    variants: 'Autres variantes',
    ready: 'Préparer la machine',
    open: 'ouvrir et vidanger',
    inside: 'examiner et refermer',
    fill: 'remplir',
    check: 'Contrôle des fuites',
    run: 'Essai et nouveau contrôle',
    closing: 'Fin',
  },
  shots: {
    opening: 'La machine entière, son manuel à côté. La personne qui présente entre dans le champ.',
    interval: 'Le compteur horaire en gros plan, puis la page du manuel avec l’intervalle.',
    tools: 'Outillage, huile et joints neufs sur un chiffon propre, dans l’ordre d’emploi.',
    variants: 'La plaque de la machine en gros plan.',
    closing: 'La personne qui présente, à côté de la machine terminée.',
  },
  once: {
    'first crack': 'premier déblocage : une seule prise',
    'first oil': 'première huile : une seule prise',
    magnet: 'aimant avant essuyage : une seule prise',
  },
  labels: {
    show: 'Montrer',
    say: 'Dire',
    screen: 'À l’écran',
    hold: 'Maintenir à l’écran',
    setting: 'régler',
    stopAt: 'Arrêter le travail au-delà de',
    scene: 'Scène',
    time: 'Temps de parole',
    missing: 'Absent du manuel ou non connu',
  },
  headings: {
    scenes: 'Scènes',
    filming: 'Ordre de tournage',
    anyTime: 'Avant le travail, tant que la machine est propre',
    inOrder: 'Pendant le travail, dans cet ordre ; les plans marqués ne peuvent pas être refaits',
    afterwards: 'Après le travail',
  },
  authority: [
    'Le manuel de la machine et les règles locales priment sur ce film.',
    'Confier le travail soumis à habilitation aux personnes qui la détiennent.',
  ],
  closing: ['Avant de repartir, regarder encore une fois sous la machine : elle doit être sèche.'],
  opening: ({ machine, variant, work }) => {
    const jobs = work.map(({ service, parts }) => `${service} – ${join(parts, 'et')}`)
    return `Voici la machine ${machine}${variant === undefined ? '' : `, variante ${quote(variant)}`}.${jobs.length === 0 ? '' : ` Le travail : ${join(jobs, 'et')}.`}`
  },
  place: ({ part, variant }) =>
    `${capitalize(part)}${variant === undefined ? '' : `, valeurs de la variante ${quote(variant)}`}.`,
  interval: ({ service, limits }) =>
    limits.length === 0
      ? `${capitalize(service)} : l’intervalle n’est pas connu. Voir le manuel.`
      : `${capitalize(service)} : intervalle de ${join(limits, 'ou')}${limits.length > 1 ? ', au premier terme atteint' : ''}.`,
  tools: (names) => (names.length === 0 ? '' : `Il faut ces outils : ${join(names, 'et')}.`),
  oil: ({ part, volume, oil }) =>
    volume === undefined
      ? `${capitalize(part)} : huile ${oil ?? 'citée par le manuel'} ; la quantité n’est pas indiquée ici.`
      : `${capitalize(part)} : ${volume} d’huile ${oil ?? 'citée par le manuel'}.`,
  seals: (seals) =>
    seals.length === 0
      ? ''
      : `Préparer ces joints : ${join(
          seals.map(({ count, kind }) => writeSealCount(count, kind)),
          'et',
        )}.`,
  figure: (role) => cardWords.roles[role].toLowerCase(),
  otherVariant: ({ variant, role, gearcase, part, value }) => {
    const places = [part, gearcase].filter((place) => place !== undefined)
    return `Variante ${quote(variant)} : ${[role, ...places].join(', ')} : ${value}.`
  },
  later: (time) => `${time} plus tard`,
}
