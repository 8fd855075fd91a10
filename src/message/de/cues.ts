import type { CueWords } from '../cueWords.js'
import { capitalize, join } from '../phrases.js'
import { cardWords } from './card.js'
import { speechWords } from './speech.js'

/** Seals that are counted, with their numeral for one and their plural; the others have no number. */
const COUNTED_SEALS = new Map<string, readonly ['ein' | 'eine', string]>([
  [cardWords.seals['crush washer'], ['ein', 'Dichtringe']],
  [cardWords.seals['bonded seal'], ['ein', 'Gummi-Metall-Dichtringe']],
  [cardWords.seals['o-ring'], ['ein', 'O-Ringe']],
  [cardWords.seals.gasket, ['eine', 'Flachdichtungen']],
])

function writeSealCount(count: number, kind: string): string {
  const [one, plural] = COUNTED_SEALS.get(kind) ?? []
  if (one === undefined) return kind
  return count === 1 ? `${one} ${kind}` : `${speechWords.numeral(String(count))} ${plural}`
}

/** The cue sheet in German. */
export const cueWords: CueWords = {
  title: 'Drehplan',
  cut: 'Schnitt: Die Wartezeit wird nicht gefilmt.',
  scenes: {
    opening: 'Einstieg',
    interval: 'Wie oft',
    tools: 'Werkzeug, Öl und Dichtungen',
    variants: 'Andere Varianten',
    ready: 'Maschine vorbereiten',
    open: 'öffnen und ablassen',
    inside: 'prüfen und schließen',
    fill: 'befüllen',
    check: 'Dichtheit prüfen',
    run: 'Laufen lassen und erneut prüfen',
    closing: 'Schluss',
  },
  shots: {
    opening: 'Die ganze Maschine, daneben ihre Betriebsanleitung. Der Moderator tritt ins Bild.',
    interval: 'Der Betriebsstundenzähler, nah, dann die Seite der Anleitung mit dem Intervall.',
    tools: 'Werkzeug, Öl und neue Dichtungen auf einem sauberen Tuch, in der Reihenfolge des Gebrauchs.',
    variants: 'Das Typenschild der Maschine, nah.',
    closing: 'Der Moderator neben der fertigen Maschine.',
  },
  once: {
    'first crack': 'erstes Lösen: nur ein Versuch',
    'first oil': 'erstes Öl: nur ein Versuch',
    magnet: 'Magnet, vor dem Abwischen: nur ein Versuch',
  },
  labels: {
    show: 'Bild',
    say: 'Text',
    screen: 'Einblendung',
    hold: 'Einblendung stehen lassen',
    setting: 'einstellen',
    stopAt: 'Arbeit abbrechen über',
    scene: 'Szene',
    time: 'Sprechzeit',
    missing: 'Nicht in der Anleitung oder nicht bekannt',
  },
  headings: {
    scenes: 'Szenen',
    filming: 'Drehfolge',
    anyTime: 'Vor der Arbeit, solange die Maschine sauber ist',
    inOrder: 'Während der Arbeit, in dieser Reihenfolge; markierte Aufnahmen sind nicht wiederholbar',
    afterwards: 'Nach der Arbeit',
  },
  authority: [
    'Die Betriebsanleitung der Maschine und die örtlichen Vorschriften gehen diesem Film vor.',
    'Erlaubnispflichtige Arbeiten nur von Personen mit dieser Erlaubnis ausführen lassen.',
  ],
  closing: ['Vor der nächsten Fahrt noch einmal unter die Maschine sehen: Sie muss trocken sein.'],
  opening: ({ machine, variant, work }) => {
    const jobs = work.map(({ service, parts }) => `${service}: ${join(parts, 'und')}`)
    return `Das ist ${machine}${variant === undefined ? '' : `, Variante ${variant}`}.${jobs.length === 0 ? '' : ` Die Arbeit: ${jobs.join('; ')}.`}`
  },
  place: ({ part, variant }) =>
    `${capitalize(part)}${variant === undefined ? '' : `, Werte für Variante ${variant}`}.`,
  interval: ({ service, limits }) =>
    limits.length === 0
      ? `${capitalize(service)}: Das Intervall ist nicht bekannt. Siehe Anleitung.`
      : `${capitalize(service)}: Intervall ${join(limits, 'oder')}${limits.length > 1 ? ', je nachdem, was zuerst eintritt' : ''}.`,
  tools: (names) => (names.length === 0 ? '' : `Dieses Werkzeug wird gebraucht: ${join(names, 'und')}.`),
  oil: ({ part, volume, oil }) =>
    volume === undefined
      ? `${capitalize(part)}: ${oil ?? 'Öl nach Anleitung'}; die Menge ist hier nicht angegeben.`
      : `${capitalize(part)}: ${volume} ${oil ?? 'Öl nach Anleitung'}.`,
  seals: (seals) =>
    seals.length === 0
      ? ''
      : `Diese Dichtungen bereitlegen: ${join(
          seals.map(({ count, kind }) => writeSealCount(count, kind)),
          'und',
        )}.`,
  figure: (role) => cardWords.roles[role],
  otherVariant: ({ variant, role, gearcase, part, value }) => {
    const places = [part, gearcase].filter((place) => place !== undefined)
    return `Variante ${variant}: ${capitalize(role)}${places.length === 0 ? '' : ` (${places.join(', ')})`}: ${value}.`
  },
  later: (time) => `${time} später`,
}
