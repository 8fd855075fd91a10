import type { BlankWords } from '../blankWords.js'
import { joinOr } from './count.js'

/** Comments of documents to fill in, in Spanish. */
export const blanks: BlankWords = {
  fillIn:
    'Para rellenar una parte, borrar su {} o [] y el # delante de las líneas de debajo, y escribir los valores propios.',
  log: 'Historial: datos, lecturas y servicios de una máquina.',
  firstDay: 'Primer día de uso.',
  plate: 'De su placa.',
  plateOrVariant: ({ variants }) => `De su placa, o su variante: ${joinOr(variants)}.`,
  readings: 'Lecturas del horómetro, del odómetro o de ambos. La última es el estado actual.',
  services: 'Servicios hechos: fecha, lecturas y trabajo.',
  sheet:
    'Hoja de datos. Sustituir "not stated" por lo que imprime el manual, en sus unidades, como los ejemplos tras #.',
  leaveNotStated: 'Dejar "not stated" donde el manual no indique nada. Otras formas:',
  brackets:
    'Paréntesis: el valor en otra unidad. Corchetes: su página. "source": la página de toda una sección.',
  levelHole: ({ fill }) =>
    `Si el orificio de llenado fija el nivel: "uses: fill, level" en ese tapón, y "fill: ${fill}, to level hole".`,
  severalVariants: 'Para una máquina con varias variantes, empezar con: new --variants short,long',
  or: 'o',
  differing: 'Valores que difieren en una variante: la ruta del valor en esta hoja, y el valor.',
  stock: 'Existencias: aceite y juntas en el estante. Un plan toma de ellas e indica qué comprar.',
  containers: 'Envases, con grado y categorías de la etiqueta; "opened" es el resto en uno abierto.',
  containerData: 'Nombre y datos de un aceite van en "oil":',
  seals: 'Juntas.',
  toolbox: 'Caja de herramientas: las del taller. Un plan las comprueba y da el ajuste de cada llave.',
  wrenches: 'Llaves dinamométricas: escala como está marcada, tipo y cuadrado.',
  wrenchAccuracy: 'La exactitud es la de ISO 6789 si no se añade la del fabricante: "4 % of reading".',
  sockets: 'Llaves, vasos y puntas, con el cuadrado si lo tienen.',
  vessels: 'Jarras y botellas graduadas: marca más alta, y paso entre marcas.',
  pans: 'Bandejas de drenaje.',
  fillers: 'Embudos con manguera.',
  stands: 'Caballetes, con la carga nominal de uno.',
  ramps: 'Rampas para ruedas, y la carga nominal de una.',
}
