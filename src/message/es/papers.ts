import type { PaperWords } from '../paperWords.js'

/** The small papers in Spanish. */
export const paperWords: PaperWords = {
  titles: {
    record: 'Registro de servicio',
    label: 'Próximo servicio',
    chart: 'Tabla de lubricación',
    picks: 'Lista de material',
    differences: 'Diferencias entre las variantes',
  },
  sections: {
    next: 'Próximo servicio',
    chart: 'Aceite, cantidad y nivel',
    intervals: 'Intervalos',
    picks: 'Aceite y piezas que preparar',
    tools: 'Herramientas',
    differences: 'Datos que difieren',
  },
  columns: {
    gearcase: 'Caja de engranajes',
    oil: 'Aceite',
    quantity: 'Llenado',
    level: 'Nivel',
    service: 'Servicio',
    every: 'Cada',
    severe: 'Uso severo',
    first: 'Primera vez',
    figure: 'Dato',
  },
  labels: {
    dueNow: 'PENDIENTE',
    notKnown: 'No se sabe',
    whicheverFirst: 'lo que ocurra primero',
    nothing: 'No hace falta nada.',
    same: 'Las variantes tienen los mismos datos.',
    afterEvent: 'antes del próximo uso, tras',
    shared: 'comparte el aceite de:',
    bottle: 'botella de muestra limpia, con etiqueta',
    count: 'Contar los tornillos',
  },
  methods: {
    'by quantity': 'por cantidad, en:',
    'to level hole': 'hasta el borde inferior de:',
    dipstick: 'hasta la marca de:',
    'sight glass': 'hasta la marca de:',
    'not stated': 'no indicado: ver el manual',
  },
  events: {
    submersion: 'inmersión',
    rebuild: 'reconstrucción',
    storage: 'almacenamiento',
    contamination: 'contaminación',
    'seal failure': 'fallo de una junta',
    'oil loss': 'pérdida de aceite',
  },
}
