import type { PaperWords } from '../paperWords.js'

/** The small papers in English. */
export const paperWords: PaperWords = {
  titles: {
    record: 'Service record',
    label: 'Next service',
    chart: 'Lubrication chart',
    picks: 'Pick list',
    differences: 'Differences between the variants',
  },
  sections: {
    next: 'Next service',
    chart: 'Oil, quantity and level',
    intervals: 'Intervals',
    picks: 'Oil and parts to pick',
    tools: 'Tools',
    differences: 'Figures that differ',
  },
  columns: {
    gearcase: 'Gearcase',
    oil: 'Oil',
    quantity: 'Refill',
    level: 'Level',
    service: 'Service',
    every: 'Every',
    severe: 'Severe use',
    first: 'First time',
    figure: 'Figure',
  },
  labels: {
    dueNow: 'DUE NOW',
    notKnown: 'Not known',
    whicheverFirst: 'whichever comes first',
    nothing: 'Nothing is needed.',
    same: 'The variants have the same figures.',
    afterEvent: 'before next use after',
    shared: 'shares the oil of the',
    bottle: 'clean sample bottle with a label',
    count: 'Count the fasteners',
  },
  methods: {
    'by quantity': 'by quantity, at the',
    'to level hole': 'to the lower edge of the',
    dipstick: 'to the mark of the',
    'sight glass': 'to the mark of the',
    'not stated': 'not stated: see the manual',
  },
  events: {
    submersion: 'submersion',
    rebuild: 'a rebuild',
    storage: 'storage',
    contamination: 'contamination',
    'seal failure': 'a failed seal',
    'oil loss': 'loss of oil',
  },
}
