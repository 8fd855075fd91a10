import type { PaperWords } from '../paperWords.js'
import { EVENT_NAMES } from './words.js'

/** The small papers in French. */
export const paperWords: PaperWords = {
  titles: {
    record: 'Rapport d’entretien',
    label: 'Prochain entretien',
    chart: 'Tableau de lubrification',
    picks: 'Liste de préparation',
    differences: 'Différences entre les variantes',
  },
  sections: {
    next: 'Prochain entretien',
    chart: 'Huile, quantité et niveau',
    intervals: 'Intervalles',
    picks: 'Huile et pièces à préparer',
    tools: 'Outillage',
    differences: 'Valeurs qui diffèrent',
  },
  columns: {
    gearcase: 'Carter',
    oil: 'Huile',
    quantity: 'Quantité',
    level: 'Niveau',
    service: 'Entretien',
    every: 'Tous les',
    severe: 'Usage sévère',
    first: 'Première fois',
    figure: 'Valeur',
  },
  labels: {
    dueNow: 'À FAIRE MAINTENANT',
    notKnown: 'Non connu',
    whicheverFirst: 'au premier terme atteint',
    nothing: 'Rien n’est nécessaire.',
    same: 'Les variantes ont les mêmes valeurs.',
    afterEvent: 'avant réutilisation, après',
    shared: 'huile commune avec :',
    bottle: 'flacon de prélèvement propre, avec étiquette',
    count: 'Compter les fixations',
  },
  methods: {
    'by quantity': 'à la quantité ; contrôle :',
    'to level hole': 'au bord inférieur :',
    dipstick: 'au repère :',
    'sight glass': 'au repère :',
    'not stated': 'non indiqué : voir le manuel',
  },
  events: EVENT_NAMES,
}
