import type { YamlProblem } from '../yamlProblem.js'

/** What can be wrong with YAML, in Spanish. */
export const yamlProblems: Readonly<Record<YamlProblem, string>> = {
  tab: 'no se permite sangrar con tabuladores',
  mapColumn: 'todas las claves de una parte deben empezar en la misma columna',
  listColumn: 'todos los elementos de una lista deben empezar en la misma columna',
  mapInLine:
    'una clave con valor no puede estar en la misma línea tras otra; poner entre comillas un texto con dos puntos',
  listAsKey: 'una lista no puede ser una clave',
  noColon: 'faltan dos puntos y un espacio tras la clave',
  keyOverLines: 'una clave debe estar en una sola línea',
  noClosingQuote: 'faltan las comillas de cierre',
  noComma: 'falta una coma entre los elementos entre corchetes o llaves',
  noDash: 'falta un guion ante el elemento de la lista',
  bracketColumn: 'el corchete o la llave de cierre falta o debe tener más sangría',
  reservedSign: 'un texto no puede empezar por este signo; ponerlo entre comillas',
  commentSpace: 'un comentario necesita un espacio delante',
  unexpected: 'signo inesperado',
  alias: 'no se permiten anclas ni alias: escribir el valor',
  keyNotText: 'una clave debe ser un texto, no una lista, un mapa ni un alias',
  severalDocuments: 'más de un documento en el texto',
}
