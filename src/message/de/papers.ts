import type { PaperWords } from '../paperWords.js'

/** The small papers in German. */
export const paperWords: PaperWords = {
  titles: {
    record: 'Wartungsnachweis',
    label: 'Nächste Wartung',
    chart: 'Schmierplan',
    picks: 'Entnahmeliste',
    differences: 'Unterschiede zwischen den Varianten',
  },
  sections: {
    next: 'Nächste Wartung',
    chart: 'Öl, Menge und Ölstand',
    intervals: 'Intervalle',
    picks: 'Öl und Teile zum Mitnehmen',
    tools: 'Werkzeug',
    differences: 'Abweichende Werte',
  },
  columns: {
    gearcase: 'Getriebe',
    oil: 'Öl',
    quantity: 'Füllmenge',
    level: 'Ölstand',
    service: 'Wartung',
    every: 'Intervall',
    severe: 'Erschwert',
    first: 'Erstmals',
    figure: 'Wert',
  },
  labels: {
    dueNow: 'JETZT FÄLLIG',
    notKnown: 'Nicht bekannt',
    whicheverFirst: 'je nachdem, was zuerst eintritt',
    nothing: 'Es wird nichts benötigt.',
    same: 'Die Varianten haben die gleichen Werte.',
    afterEvent: 'vor dem nächsten Einsatz nach',
    shared: 'gemeinsam mit:',
    bottle: 'saubere Probenflasche mit Etikett',
    count: 'Schrauben zählen',
  },
  methods: {
    'by quantity': 'nach Menge, an:',
    'to level hole': 'bis zur Unterkante, an:',
    dipstick: 'bis zur Markierung, an:',
    'sight glass': 'bis zur Markierung, an:',
    'not stated': 'nicht angegeben: siehe Anleitung',
  },
  events: {
    submersion: 'Eintauchen in Wasser',
    rebuild: 'Überholung',
    storage: 'Stilllegung',
    contamination: 'Verunreinigung',
    'seal failure': 'Ausfall einer Dichtung',
    'oil loss': 'Ölverlust',
  },
}
