import type { ExpectedJson, NotPlainData, SpecCodes, TypeName } from '../../spec/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, nameOf, writeUnitName } from '../phrases.js'
import { cardWords } from './card.js'
import { describeNotation } from './notation.js'
import { join, writeFact } from './words.js'

const TYPE_NAMES: Readonly<Record<TypeName, string>> = {
  object: 'un objeto',
  list: 'una lista',
  text: 'un texto',
  number: 'un número',
  'whole-number': 'un número entero',
  'true-or-false': '"true" o "false"',
  null: '"null"',
}

/** Reasons why a line of a history cannot be used. */
const HISTORY_PROBLEMS: Readonly<Record<SpecCodes['spec/history-line-unreadable']['problem'], string>> = {
  'not-json': 'no es JSON válido',
  'repeated-key': 'una clave aparece dos veces',
  'too-deep': 'está anidada demasiado hondo',
  'not-an-addition': 'se esperaba {"op":"add","path":…,"value":…}',
  'no-such-place': 'el historial no tiene esa ruta, o no se puede cambiar',
  'not-at-the-end': 'solo se añade al final de una lista: la ruta debe acabar en /-',
  'replaces-a-part': 'sustituiría datos existentes; cada línea añade un elemento a una lista',
}

const JSON_NEEDS: Readonly<Record<ExpectedJson, string>> = {
  value: 'se esperaba un valor',
  key: 'se esperaba una clave entre comillas dobles (sin coma antes de una llave de cierre)',
  colon: 'se esperaban dos puntos',
  'comma-or-brace': 'se esperaba una coma o una llave de cierre',
  'comma-or-bracket': 'se esperaba una coma o un corchete de cierre',
  end: 'se esperaba el final del texto',
  'closing-quote': 'faltan las comillas de cierre',
  escape: 'secuencia de escape desconocida; escribir dos barras inversas',
  'no-control-character':
    'un fin de línea, un tabulador u otro carácter de control entre comillas debe escribirse como secuencia de escape',
}

const NOT_PLAIN_NAMES: Readonly<Record<NotPlainData, string>> = {
  undefined: 'un valor sin definir; omitir la clave',
  function: 'una función',
  symbol: 'un símbolo',
  bigint: 'un BigInt; escribir un número',
  'not-finite': 'un número que no es finito',
  cycle: 'un objeto que se contiene a sí mismo',
  'sparse-list': 'una lista con huecos',
  'list-with-keys': 'una lista con claves',
  accessor: 'un método de acceso (getter); dar el valor',
  'hidden-property': 'una propiedad no enumerable',
  'symbol-key': 'un símbolo como clave',
  'class-instance': 'una instancia de una clase; dar un objeto simple',
  unreadable: 'un objeto que no se puede leer',
}

const quote = (text: string): string => `"${text}"`
const joinWithOr = (items: readonly string[]): string => join(items, 'o')
const writeSuggestion = (didYouMean: string | undefined): string =>
  didYouMean === undefined ? '' : ` ¿Se quería decir ${quote(didYouMean)}?`
const writeRange = (from: number | string | undefined, to: number | string | undefined): string =>
  from === undefined ? `hasta ${to}` : to === undefined ? `desde ${from}` : `${from} a ${to}`

export const specTexts: Texts<SpecCodes> = {
  'spec/variant-stated': ({ variant }) => `El historial nombra la variante ${variant}.`,
  'spec/variant-selected': ({ variant }) => `La variante ${variant} es la única cuya condición se cumple.`,
  'spec/variant-only': ({ variant }) => `La variante ${variant} es la única de la hoja de datos.`,
  'spec/variant-not-known': ({ candidates }) =>
    candidates.length === 0
      ? 'La hoja de datos no tiene variantes.'
      : `No se conoce la variante: ${joinWithOr(candidates)}. Anotarla en el historial.`,
  'spec/variant-not-on-sheet': ({ variant, known }, say) =>
    `El historial nombra la variante ${quote(variant)}, que no está en la hoja de datos${known.length === 0 ? '' : ` (${say.list(known)})`}. Comprobar la hoja y el historial.`,
  'spec/variant-contradicted': ({ variant, candidates }, say) =>
    `El historial nombra la variante ${variant}, pero los otros datos de la máquina la excluyen${candidates.length === 0 ? '' : `; corresponden a ${say.list(candidates)}`}. Comprobar la placa de la máquina.`,
  'spec/variant-none-fits': ({ known }, say) =>
    `Ninguna variante de la hoja de datos corresponde a esta máquina; la hoja tiene ${say.list(known)}. Comprobar el número de serie, o buscar la hoja que lo incluye.`,
  'spec/variant-without-condition': ({ variant }) =>
    `La hoja de datos no da condición para la variante ${variant}; el historial debe nombrarla.`,
  'spec/fact-missing': ({ fact }) => `Falta ${writeFact(fact)}. Anotarlo en el historial.`,
  'spec/variant-listed': ({ variants, listed }, say) =>
    `Se aplica a ${say.list(listed)}; esta máquina es ${say.list(variants)}.`,
  'spec/variant-not-listed': ({ variants, listed }, say) =>
    listed.length === 0
      ? 'No se aplica a ninguna variante: la lista está vacía.'
      : `Se aplica solo a ${say.list(listed)}; esta máquina es ${say.list(variants)}.`,
  'spec/model-year-in-range': ({ modelYear, from, to }) =>
    `El año de modelo ${modelYear} está dentro del margen ${writeRange(from, to)}.`,
  'spec/model-year-out-of-range': ({ modelYear, from, to }) =>
    `El año de modelo ${modelYear} está fuera del margen ${writeRange(from, to)}.`,
  'spec/serial-in-range': ({ serial, prefix, from, to }) =>
    `El número de serie ${serial} está dentro del margen ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-out-of-range': ({ serial, prefix, from, to }) =>
    `El número de serie ${serial} está fuera del margen ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-form-differs': ({ serial, prefix, width }, say) =>
    `El número de serie ${quote(serial)} no tiene la forma del margen: ${prefix === '' ? '' : `${quote(prefix)}, luego `}${width === undefined ? 'un número' : `un número de ${say.count(width, 'cifra', 'cifras')}`}. Comprobar la placa.`,
  'spec/serial-range-unreadable': ({ prefix, from, to }) =>
    `El margen de números de serie ${writeSerialRange(prefix, from, to)} no se puede usar: los dos extremos deben ser números con la misma cantidad de cifras.`,
  'spec/market-listed': ({ market, listed }, say) =>
    `Se aplica al mercado ${say.list(listed)}; esta máquina es para ${market}.`,
  'spec/market-not-listed': ({ market, listed }, say) =>
    listed.length === 0
      ? 'No se aplica a ningún mercado: la lista está vacía.'
      : `Se aplica solo al mercado ${say.list(listed)}; esta máquina es para ${market}.`,
  'spec/market-case-differs': ({ market, listed }, say) =>
    `El mercado ${quote(market)} difiere de ${say.list(listed)} solo en mayúsculas y minúsculas. Escribir los dos igual.`,
  'spec/part-on-every-machine': () => 'Todas las máquinas de esta hoja de datos tienen esta pieza.',
  'spec/part-on-some-machines': () => 'Solo algunas máquinas de esta hoja de datos tienen esta pieza.',
  'spec/leaf-from-sheet': () => 'La hoja de datos da este dato directamente.',
  'spec/leaf-absent': () => 'La hoja de datos no da este dato.',
  'spec/override-applies': () => 'A esta máquina se le aplica una sustitución de la hoja de datos.',
  'spec/override-may-apply': () => 'A esta máquina se le puede aplicar una sustitución de la hoja de datos.',
  'spec/override-does-not-fit': () =>
    'Una sustitución de la hoja de datos apunta aquí, pero su dato es de otro tipo, o apunta a una parte de un dato. Corregir la hoja de datos.',
  'spec/overrides-overlap': ({ overrides }, say) =>
    `Aquí se ${overrides.length === 1 ? 'aplica' : 'aplican'} a la vez ${say.count(overrides.length, 'sustitución', 'sustituciones')} de la hoja de datos. Corregir la hoja para que solo se aplique una.`,
  'spec/candidates-agree': ({ candidates }, say) =>
    `Se ${candidates.length === 1 ? 'puede aplicar' : 'pueden aplicar'} ${say.count(candidates.length, 'dato', 'datos')}; todos son iguales.`,
  'spec/not-yaml': ({ line, column, problem }) =>
    `YAML no válido: línea ${line}, columna ${column}: ${problem}`,
  'spec/yaml-comma-in-braces': ({ text }) =>
    `YAML lee ${quote(text)} como clave: entre llaves, una coma acaba un texto. Poner entre comillas los textos con comas.`,
  'spec/yaml-comment-in-text': ({ text, comment }) =>
    `YAML lee solo ${quote(text)}, y ${quote(`#${comment}`)} como comentario. Poner el texto entre comillas, o un espacio después de #.`,
  'spec/yaml-key-is-boolean': ({ key }) =>
    `YAML lee esta clave como ${key}, no como palabra. Ponerla entre comillas.`,
  'spec/yaml-too-large': ({ limit }, say) =>
    `Este YAML tiene más de ${say.number(limit)} palabras, signos y fines de línea. Escribirlo como JSON, o dividirlo.`,
  'spec/not-json': ({ line, column, needs }) =>
    `JSON no válido: línea ${line}, columna ${column}: ${JSON_NEEDS[needs]}.`,
  'spec/table-instead-of-document': ({ columns }, say) =>
    `Esto es una tabla (CSV) con las columnas ${say.list(columns.map(quote))}, no un documento. Escribir un documento como JSON o YAML. Para una flota, dar cada fila como una línea de JSON a “due -”.`,
  'spec/history-line-unreadable': ({ line, problem }) =>
    `La línea ${line} de los cambios no se puede usar: ${HISTORY_PROBLEMS[problem]}.`,
  'spec/history-cut-off': ({ line }) =>
    `La línea ${line}, la última de los cambios, está cortada y no se leyó. Borrarla y añadirla de nuevo.`,
  'spec/duplicate-key': ({ key }) =>
    `Clave repetida ${quote(key)}. Solo se leería la última: borrar la equivocada.`,
  'spec/not-plain-data': ({ found }) => `No son datos JSON: se encontró ${NOT_PLAIN_NAMES[found]}.`,
  'spec/forbidden-key': ({ key }) => `La clave ${quote(key)} no se permite en un documento. Elegir otra.`,
  'spec/too-deep': ({ limit }, say) =>
    `Hay listas y objetos anidados a más de ${say.count(limit, 'nivel', 'niveles')}.`,
  'spec/too-long': ({ length, limit }, say) =>
    `Este texto tiene ${say.number(length)} caracteres; el límite es ${say.number(limit)}.`,
  'spec/too-large': ({ limit }, say) =>
    `Hay más de ${say.number(limit)} valores o claves. Dividir el documento.`,
  'spec/more-mistakes': ({ shown }, say) =>
    `Este documento tiene más de ${say.count(shown, 'error', 'errores')}; los demás no se muestran.`,
  'spec/wrong-kind': ({ found, expected, didYouMean }) =>
    `Se esperaba el tipo ${joinWithOr(expected)}; se encontró ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/wrong-version': ({ found, readable, quotes }) =>
    quotes
      ? `Se esperaba la versión como texto: escribir ${quote(readable[0] ?? '')}, entre comillas.`
      : `Se esperaba la versión ${joinWithOr(readable)}; se encontró ${found}.`,
  'spec/missing-key': ({ key, allowed }) =>
    `Falta la clave ${quote(key)}${allowed === undefined ? '' : ` (${joinWithOr(allowed.map(quote))})`}.`,
  'spec/unknown-key': ({ key, known, didYouMean }, say) =>
    `Clave desconocida ${quote(key)}.${didYouMean === undefined ? (known.length === 0 ? '' : ` Conocidas: ${say.list(known)}.`) : writeSuggestion(didYouMean)}`,
  'spec/wrong-type': ({ expected, found, value }) =>
    `Se esperaba ${TYPE_NAMES[expected]}; se encontró ${TYPE_NAMES[found]}${value === undefined ? '' : ` (${value})`}.`,
  'spec/not-in-list': ({ found, allowed, didYouMean }) =>
    `Se esperaba ${joinWithOr(allowed.map(quote))}; se encontró ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-figure': ({ found }) =>
    `Se esperaba un dato numérico; se encontró ${quote(found)}. Escribir las cifras como están impresas, con punto decimal: hasta nueve antes y seis después. Una fracción va en "asPrinted".`,
  'spec/interval-too-long': ({ found }) =>
    `El intervalo ${found} es inverosímil por largo: como máximo seis cifras antes del punto decimal.`,
  'spec/comma-decimal': ({ found, didYouMean }) =>
    didYouMean === undefined
      ? `El dato ${quote(found)} tiene una coma, que puede ser de decimales o de millares. Escribir un punto decimal y ningún separador de millares.`
      : `El dato ${quote(found)} tiene coma decimal. Escribir ${quote(didYouMean)}.`,
  'spec/figure-without-quotes': ({ found }, say) =>
    `Se esperaba un dato entre comillas; se encontró el número ${say.number(found, 15)}, que pierde los ceros impresos. Escribirlo como está impreso.`,
  'spec/bad-id': ({ found, didYouMean }) =>
    `Se esperaba un id (letras minúsculas, cifras y guiones, con una letra al principio, como máximo 64 caracteres); se encontró ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-date': ({ found }) => `Se esperaba una fecha como 2031-03-09; se encontró ${quote(found)}.`,
  'spec/bad-period': ({ found }) =>
    `Se esperaba un período de años, meses, semanas o días enteros, como P1Y, P6M, P2W o P10D; se encontró ${quote(found)}.`,
  'spec/bad-pointer': ({ found }) =>
    `Se esperaba un puntero JSON; se encontró ${quote(found)}. Empezar cada clave con /; dentro de una clave, escribir ~1 por / y ~0 por ~.`,
  'spec/bad-currency': ({ found }) =>
    `Se esperaba un código de moneda de tres letras mayúsculas, como EUR; se encontró ${quote(found)}.`,
  'spec/bad-sha256': ({ found }) =>
    `Se esperaba un SHA-256 de 64 cifras y letras de la a a la f; se encontró ${quote(found)}.`,
  'spec/empty-text': ({ key }) =>
    `Texto vacío en ${quote(key)}. Completarlo, u omitir la clave si es opcional.`,
  'spec/empty-list': ({ key }) => `Lista vacía en ${quote(key)}; necesita al menos una entrada.`,
  'spec/bad-notation': describeNotation,
  'spec/number-too-small': ({ found, limit, inclusive }, say) =>
    `Se esperaba ${inclusive ? `${say.number(limit)} o más` : `más de ${say.number(limit)}`}; se encontró ${say.number(found, 15)}.`,
  'spec/number-too-large': ({ found, limit }, say) =>
    `Se esperaba ${say.number(limit)} o menos; se encontró ${say.number(found, 15)}.`,
  'spec/interval-empty': () =>
    'Intervalo vacío: el servicio nunca estaría pendiente. Dar horas, distancia o período, o “not stated”.',
  'spec/limits-empty': ({ unit }, say) =>
    `Estos límites (${writeUnitName(unit, say)}) no tienen mínimo ni máximo. Dar uno, o “not stated”.`,
  'seal/zero-size': ({ part, size }) =>
    `${capitalize(part)}: en la junta, “${size}” es 0 mm. Omitir una medida que no se conoce.`,
  'interval/limit-not-above-zero': ({ by }) =>
    `El límite de ${nameOf(cardWords.dueBy, by)} es cero. Corregir la hoja de datos.`,
}

function writeSerialRange(prefix: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return `${prefix}…`
  return writeRange(
    from === undefined ? undefined : `${prefix}${from}`,
    to === undefined ? undefined : `${prefix}${to}`,
  )
}
