import type { YamlProblem } from '../yamlProblem.js'

/** What can be wrong with YAML, in German. */
export const yamlProblems: Readonly<Record<YamlProblem, string>> = {
  tab: 'Einrückung mit Tabulatoren ist nicht erlaubt',
  mapColumn: 'alle Schlüssel eines Teils müssen in derselben Spalte beginnen',
  listColumn: 'alle Einträge einer Liste müssen in derselben Spalte beginnen',
  mapInLine:
    'ein Schlüssel mit Wert darf nicht in derselben Zeile nach einem anderen stehen; Text mit Doppelpunkt in Anführungszeichen setzen',
  listAsKey: 'eine Liste kann kein Schlüssel sein',
  noColon: 'nach dem Schlüssel fehlt ein Doppelpunkt mit Leerzeichen',
  keyOverLines: 'ein Schlüssel muss in einer Zeile stehen',
  noClosingQuote: 'das schließende Anführungszeichen fehlt',
  noComma: 'zwischen den Einträgen in Klammern fehlt ein Komma',
  noDash: 'vor dem Eintrag der Liste fehlt ein Strich',
  bracketColumn: 'die schließende Klammer fehlt oder muss weiter eingerückt sein',
  reservedSign: 'ein Text darf nicht mit diesem Zeichen beginnen; in Anführungszeichen setzen',
  commentSpace: 'vor einem Kommentar muss ein Leerzeichen stehen',
  unexpected: 'unerwartetes Zeichen',
  alias: 'Anker und Verweise sind nicht erlaubt: den Wert ausschreiben',
  keyNotText: 'ein Schlüssel muss ein Text sein, keine Liste, kein Teil und kein Verweis',
  severalDocuments: 'mehr als ein Dokument im Text',
}
