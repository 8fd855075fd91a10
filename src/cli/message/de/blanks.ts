import type { BlankWords } from '../blankWords.js'
import { joinOr } from './count.js'

/** Comments of documents to fill in, in German. */
export const blanks: BlankWords = {
  fillIn:
    'Zum Ausfüllen eines Teils {} oder [] und das # vor den Zeilen darunter löschen, dann eigene Werte schreiben.',
  log: 'Betriebsbuch: Angaben, Zählerstände und Wartungen einer Maschine.',
  firstDay: 'Erster Tag der Nutzung.',
  plate: 'Vom Typenschild.',
  plateOrVariant: ({ variants }) => `Vom Typenschild, oder die Variante: ${joinOr(variants)}.`,
  readings:
    'Stände des Betriebsstundenzählers, des Wegstreckenzählers oder beider. Der letzte ist der aktuelle Stand.',
  services: 'Ausgeführte Wartungen: Datum, Zählerstände und Arbeit.',
  sheet:
    'Datenblatt. "not stated" ersetzen: Werte wie in der Anleitung, in ihren Einheiten, wie die Beispiele hinter #.',
  leaveNotStated: '"not stated" stehen lassen, wo die Anleitung nichts angibt. Weitere Formen:',
  brackets:
    'Runde Klammern: der Wert in anderer Einheit. Eckige: seine Seite. "source": die Seite eines ganzen Teils.',
  levelHole: ({ fill }) =>
    `Bestimmt die Einfüllbohrung den Ölstand: "uses: fill, level" bei der Schraube und "fill: ${fill}, to level hole".`,
  severalVariants: 'Für eine Maschine mit mehreren Varianten beginnen mit: new --variants short,long',
  or: 'oder',
  differing: 'Werte, die in einer Variante abweichen: Pfad des Werts in diesem Datenblatt, und der Wert.',
  stock: 'Bestand: Öl und Dichtungen im Regal. Ein Plan entnimmt daraus und nennt, was zu kaufen ist.',
  containers: 'Gebinde, mit Sorte und Leistungsklassen vom Etikett; "opened" ist der Rest in einem offenen.',
  containerData: 'Name und Daten eines Öls gehören unter "oil":',
  seals: 'Dichtungen.',
  toolbox:
    'Werkzeugkasten: die Werkzeuge der Werkstatt. Ein Plan prüft sie und gibt jedem Schlüssel den Einstellwert.',
  wrenches: 'Drehmomentschlüssel: Skala wie aufgedruckt, Bauart und Vierkant.',
  wrenchAccuracy:
    'Die Genauigkeit ist die nach ISO 6789, wenn nicht die des Herstellers dabeisteht: "4 % of reading".',
  sockets: 'Schlüssel, Steckschlüssel und Bits, mit Vierkant, wenn sie einen haben.',
  vessels: 'Messbecher und Flaschen: oberster Teilstrich und Schritt der Teilstriche.',
  pans: 'Auffangwannen.',
  fillers: 'Trichter mit Schlauch.',
  stands: 'Unterstellböcke, mit der Tragfähigkeit eines Bocks.',
  ramps: 'Auffahrrampen für Räder, und die Tragfähigkeit einer Rampe.',
}
