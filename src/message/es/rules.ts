import type { RuleCodes } from '../../rules/index.js'
import type {
  CaseFace,
  FillMethod,
  Filter,
  MachineLog,
  ProcedureDocument,
  ServiceRecord,
  SpecSheet,
  Stock,
  Toolbox,
} from '../../spec/index.js'
import type { Say, Texts } from '../catalogue.js'
import { nameOf, writeUnitName } from '../phrases.js'
import { cardWords } from './card.js'
import { MEASURE_NAMES } from './quantity.js'
import { withDe, writeDigits, writeMeter } from './words.js'

interface Suggestion {
  readonly known: readonly string[]
  readonly more: number
  readonly meant: string | undefined
}

/** The probable name, or the known names. Starts with a space; empty if no name is known. */
function writeSuggestion({ meant, known, more }: Suggestion, say: Say): string {
  if (meant !== undefined) return ` ¿Se quería decir “${meant}”?`
  if (known.length === 0) return ''
  const names = known.map((name) => `“${name}”`)
  const moreText = more > 0 ? [`${say.number(more)} más`] : []
  return ` Hay ${say.list([...names, ...moreText])}.`
}

type Volume = RuleCodes['record/refill-outside-tolerance']['refilled']

const WARRANTY_FACT_NAMES: Readonly<
  Record<RuleCodes['record/warranty-facts-missing']['lacks'][number], string>
> = {
  'who did it': 'quién hizo el trabajo',
  photos: 'fotos',
  'oil batch': 'el lote del aceite',
  'part numbers': 'los números de las piezas nuevas',
  'wrench certificate': 'el certificado de cada llave dinamométrica',
  signature: 'una firma',
}

function writeRefillFix({ value, unit }: Volume, byLevel: boolean, say: Say): string {
  if (byLevel)
    return 'comprobar que la máquina está nivelada y que el aceite se drenó del todo; luego poner el nivel en su marca.'
  const amount = say.quantity({ value: Math.abs(value), unit })
  return `${value > 0 ? `sacar ${amount}` : `añadir ${amount}`} y comprobar el nivel.`
}

const UNMEASURED_TEXTS: Readonly<Record<RuleCodes['record/tightening-not-measured']['done'], string>> = {
  'by hand': 'solo con apriete a mano. Apretar como indica la hoja de datos antes de mover la máquina',
  'without a wrench': 'con apriete, pero el par no se midió. Apretar con una llave dinamométrica',
  'not checked': 'el apriete no se comprobó. Comprobarlo antes de mover la máquina',
  'not known': 'no se sabe si está firme. Comprobarlo antes de mover la máquina',
}

const SERIAL_MISTAKES: Readonly<Record<RuleCodes['spec/serial-range-wrong']['what'], string>> = {
  'prefix repeated': 'el número repite el prefijo. Quitar ahí el prefijo',
  'not a number': 'los dos extremos deben tener solo cifras. Poner las letras en el prefijo',
  'different widths': 'los dos extremos necesitan el mismo número de cifras. Escribir los ceros iniciales',
  'ends before it starts': 'el margen acaba antes de empezar',
}

/** `ninguna pieza` of the sheet: with the negative that agrees. */
const NO_TARGETS: Readonly<Record<RuleCodes['spec/dangling-reference']['to'], string>> = {
  source: 'ninguna fuente',
  axle: 'ningún eje',
  support: 'ningún apoyo',
  gearcase: 'ninguna caja de engranajes',
  opening: 'ninguna abertura',
  cover: 'ninguna tapa',
  shield: 'ningún protector',
  service: 'ningún servicio',
}

type AnyDocument = SpecSheet | MachineLog | Toolbox | Stock | ProcedureDocument | ServiceRecord
const DOCUMENT_KINDS: Readonly<Record<AnyDocument['kind'], string>> = {
  'spec-sheet': 'hoja de datos',
  'machine-log': 'historial',
  toolbox: 'caja de herramientas',
  stock: 'existencias',
  procedure: 'procedimiento',
  'service-record': 'registro de servicio',
}

const SIDES: Readonly<Record<CaseFace, string>> = {
  front: 'delante',
  rear: 'detrás',
  left: 'izquierda',
  right: 'derecha',
  top: 'arriba',
  bottom: 'abajo',
}

const OPENING_ROLES: Readonly<Record<RuleCodes['spec/opening-without-role']['role'], string>> = {
  fill: 'llenar',
  drain: 'drenar',
  level: 'nivel',
}

const OPENING_USES: Readonly<Record<FillMethod['kind'] | 'drain plug', string>> = {
  'by quantity': 'llenar por cantidad',
  'to level hole': 'llenar hasta el orificio de nivel',
  dipstick: 'leer la varilla de nivel',
  'sight glass': 'leer la mirilla',
  'drain plug': 'drenar',
  'not stated': 'llenar',
}

const FILTER_CHANGES: Readonly<Record<Filter['change'], string>> = {
  'every change': 'cambiara',
  'clean every change': 'limpiara',
  'not stated': 'cambiara o limpiara',
}

const LEAKS: Readonly<Record<RuleCodes['record/leak-left']['found'], string>> = {
  weeping: 'rezumaba',
  dripping: 'goteaba',
}

const METAL: Readonly<Record<RuleCodes['record/metal-in-the-oil']['found'], string>> = {
  metallic: 'metal en el aceite',
  chips: 'virutas en el imán o en un filtro',
  pieces: 'trozos en el imán o en un filtro',
}

const LEVELS: Readonly<Record<RuleCodes['record/level-not-right']['level'], string>> = {
  'not checked': 'nivel sin comprobar. Comprobarlo',
  below: 'nivel por debajo de la marca. Corregirlo',
  above: 'nivel por encima de la marca. Corregirlo',
}

export const rulesTexts: Texts<RuleCodes> = {
  // Sheets, and references to them.
  'spec/condition-empty': ({ holds }) =>
    holds === 'always'
      ? 'Condición vacía: toda máquina la cumple. Completarla o quitarla.'
      : 'Lista vacía: ninguna máquina cumple la condición. Completar la lista o quitarla.',
  'spec/dangling-reference': ({ to, id, ...names }, say) =>
    `La hoja de datos no tiene ${nameOf(NO_TARGETS, to)} “${id}”.${writeSuggestion(names, say)}`,
  'spec/id-used-twice': ({ kind, id }) =>
    `Id repetido “${id}” en este conjunto (${nameOf(DOCUMENT_KINDS, kind)}). Dar a cada documento su propio id.`,
  'spec/instances-without-per': ({ gearcase, count }, say) =>
    `La máquina tiene ${say.number(count)} de “${gearcase}”. ¿La cantidad es para una o para todas? Añadir “per”.`,
  'spec/limits-reversed': ({ min, max, unit }, say) =>
    `El mínimo ${say.quantity({ value: min, unit })} supera el máximo ${say.quantity({ value: max, unit })}. Comprobar el manual.`,
  'spec/model-years-reversed': ({ from, to }) =>
    `Los años de modelo acaban en ${to}, antes de empezar en ${from}, así que ninguna máquina cumple esta condición. Corregir los años.`,
  'spec/no-fill-opening': ({ gearcase }) =>
    `“${gearcase}” no tiene abertura de llenado, así que no se puede llenar después de drenar. Dar a una abertura el uso “fill”.`,
  'spec/no-way-to-empty': ({ gearcase }) =>
    `Un servicio cambia el aceite de “${gearcase}”, pero la hoja de datos no tiene forma de vaciar la caja. Nombrar un tapón de drenaje, una tapa o la aspiración.`,
  'spec/oil-space-chain': ({ gearcase, with: owner }) =>
    `“${gearcase}” comparte el aceite de “${owner}”, que a su vez comparte el aceite de otra caja. Nombrar la caja propietaria del aceite.`,
  'spec/opening-without-role': ({ opening, role, use }) =>
    `“${opening}” se nombra aquí para ${nameOf(OPENING_USES, use)}, pero su entrada no tiene el uso “${role}” (${nameOf(OPENING_ROLES, role)}). Corregir uno de los dos.`,
  'spec/overlapping-overrides': ({ target, with: other }) =>
    `Esta sustitución y ${other} fijan ${target} para la misma máquina. Restringir una de las condiciones; el orden de las sustituciones no decide.`,
  'spec/override-of-other-kind': ({ target, kind, there }) =>
    `Esta sustitución es del tipo “${kind}”, pero ${target} es del tipo “${there}”.`,
  'spec/override-target-missing': ({ target }) =>
    `La hoja de datos no tiene en ${target} ningún dato que la sustitución pueda fijar. Comprobar el puntero.`,
  'spec/part-supersedes-itself': ({ partNumber, numbers }) =>
    `La pieza ${partNumber} se sustituye a sí misma (${numbers.join(' → ')}), así que no hay número que comprar. Corregir uno de ellos.`,
  'spec/period-as-hours': ({ hours, months }, say) =>
    `${writeDigits(hours)} h parecen ${say.count(months, 'mes', 'meses')} en horas. Un horómetro cuenta trabajo, no calendario: escribir el período como P${months}M.`,
  'spec/serial-range-wrong': ({ what, prefix = '', from = '…', to = '…' }) =>
    `Números de serie ${prefix}${from} a ${prefix}${to}: ${SERIAL_MISTAKES[what]}.`,
  'spec/sheet-not-found': ({ id, ...names }, say) =>
    `En este conjunto no hay ninguna hoja “${id}”.${writeSuggestion(names, say)}`,
  'spec/sheet-of-other-revision': ({ id, revision, known }, say) =>
    `Aquí se nombra la revisión “${revision}” de la hoja “${id}”; el conjunto tiene ${say.list(known.map((knownRevision) => `“${knownRevision}”`))}. Comparar las dos y nombrar la revisión correcta.`,
  'spec/tolerance-too-large': ({ value, minus, plus, unit }, say) =>
    `Una tolerancia de − ${writeDigits(minus)} + ${writeDigits(plus)} en ${say.quantity({ value, unit })} es tan grande como el valor. Comprobar la coma decimal.`,
  'spec/unit-of-other-measure': ({ unit, measure, required }, say) =>
    `Se esperaba ${nameOf(MEASURE_NAMES, required)}; se encontró ${nameOf(MEASURE_NAMES, measure)} (${writeUnitName(unit, say)}).`,
  'spec/unknown-variant': ({ id, ...names }, say) =>
    `La hoja de datos no tiene la variante “${id}”.${writeSuggestion(names, say)}`,
  'spec/variants-overlap': ({ variant, with: other }) =>
    `Con estas condiciones una máquina puede ser a la vez “${variant}” y “${other}”. Restringirlas para que solo se cumpla una.`,
  'spec/waiver-without-finding': ({ code, waived }) =>
    `Esta excepción no corresponde a ningún aviso: no hay ${code} en ${waived === '' ? 'todo el documento' : waived}. Quitarla, o corregir su puntero.`,
  'spec/support-on-another-axle': ({ gearcase, axle, lifted }, say) =>
    `“${gearcase}” está en “${axle}”, pero sus apoyos levantan ${say.list(lifted.map((name) => `“${name}”`))}: la máquina se elevaría por el extremo equivocado. Comprobar el manual.`,
  'spec/drain-at-mark-up': ({ opening }) =>
    `“${opening}” drena con la marca arriba: la abertura queda entonces arriba y el aceite se queda dentro. Comprobar el manual.`,
  'spec/wheel-mark-missing': ({ opening }) =>
    `“${opening}” llena, drena y muestra el nivel, pero la hoja de datos no da la posición de la rueda para cada uso. Añadir “wheelMark” a sus usos.`,
  'spec/implausible-drain-temperature': ({ gearcase, temperature }, say) =>
    `${gearcase}: drenar a ${say.quantity(temperature)} quemaría a quien abra el tapón. ${temperature.unit === 'degC' ? '¿Estaba el dato impreso en °F? ' : ''}Comprobar el manual.`,
  'spec/drain-not-named': ({ opening, gearcase }) =>
    `${gearcase}: “${opening}” es un drenaje, pero ninguna forma de vaciar lo nombra: quedaría cerrado, con aceite viejo dentro. Nombrarlo, o quitar el uso “drain”.`,
  'spec/gearcase-without-change': ({ gearcase }) =>
    `Ningún servicio cambia el aceite de “${gearcase}”. Añadir la caja a uno, o anotar una excepción si el manual la llena de por vida.`,
  'spec/filter-without-change': ({ gearcase }) =>
    `Ningún cambio de aceite incluye los filtros de “${gearcase}”, porque nunca se vacía. Pasarlos a la caja propietaria del aceite, o indicar cómo se vacía.`,
  'spec/position-contradicts-place': ({ part, place, position }) =>
    `${part}: las palabras del lugar dicen ${nameOf(SIDES, place)}, la posición dice ${nameOf(SIDES, position)}. Comprobar el manual y corregir uno de los dos.`,
  'spec/position-off-face': ({ part, face, coordinate }) =>
    coordinate === 'offset'
      ? `${part}: un desplazamiento es una distancia hacia un lado. Añadir “across”, como “left”.`
      : `${part}: la ${cardWords.caseFaces[face]} no tiene “${coordinate}”. Quitarlo, o corregir la cara.`,
  'spec/level-on-raised-end': ({ gearcase, raised }) =>
    raised === 'nothing'
      ? `${gearcase}: el nivel se lee sobre caballetes, pero la máquina se queda en el suelo. Corregir uno de los dos.`
      : `${gearcase}: el nivel se lee sobre caballetes, pero levantan un solo extremo, y una máquina inclinada muestra un nivel falso. Comprobar el manual.`,
  'spec/implausible-mass': ({ mass }, say) =>
    `Una máquina de ${say.quantity(mass)} no es verosímil, y con su masa se compara la carga de los caballetes. ¿Se confundieron toneladas y kilogramos?`,
  'spec/source-date-in-the-future': ({ date, today }, say) =>
    `Esta fuente tiene fecha ${say.date(date)}, posterior a hoy, ${say.date(today)}. Comprobar el año.`,
  'spec/override-far-from-base': ({ figure, base }, say) =>
    `${say.quantity(figure)} en algunas máquinas y ${say.quantity(base)} en las demás difieren mucho. Comprobar la coma decimal y la unidad.`,
  'spec/size-spelling': ({ size, meant }) =>
    `Las medidas se comparan como texto: escribir “${meant}”, no “${size}”.`,
  'spec/override-equals-base': ({ target }) =>
    `Esta sustitución fija el valor que la hoja de datos ya tiene en ${target}. Quitarla, o comprobar el dato.`,
  'spec/model-year-gap': ({ from, to }) =>
    `Ninguna variante cubre los años de modelo ${from === to ? from : `${from} a ${to}`}. Comprobar si entonces se fabricó alguna máquina.`,
  // Printed figures: second units, threads and torques.
  'quantity/interval-distances-differ': ({ first, second }, say) =>
    `${say.quantity(first)} y ${say.quantity(second)} difieren en más de una décima parte. Decide la más corta.`,
  'quantity/second-unit-disagrees': (params, say) =>
    say.reason({
      code: `quantity/printed-figures-${params.how === 'miss' ? 'differ-slightly' : params.how}`,
      params,
    }),
  'quantity/second-unit-slip': (params, say) => say.reason({ code: 'quantity/printed-figures-slip', params }),
  'quantity/distance-converted-wrong-way': ({ first, second }, say) =>
    `${say.quantity(first)} y ${say.quantity(second)}: en millas, una distancia es el número menor, así que se convirtió al revés. Comprobar el manual; decide la más corta.`,
  'thread/designation-unreadable': ({ thread, part, because }, say) =>
    `${part}: la rosca “${thread}” no se puede leer.${because === null ? '' : ` ${say.reason(because)}`}`,
  'torque/above-proof-load': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} cargaría un tornillo (${thread}, clase ${propertyClass}) con aprox. ${say.quantity({ value: Math.round(load.value / 100) / 10, unit: 'kN' })}; su carga de prueba es ${say.quantity({ value: Math.round(proof.value / 100) / 10, unit: 'kN' })}. Comprobar unidad y clase.`,
  'torque/fill-and-drain-swapped': ({ gearcase, fill, drain }, say) =>
    `${gearcase}: ${say.quantity(fill)} en el tapón de llenado y ${say.quantity(drain)} en el de drenaje irían mejor con la rosca del otro. Comprobar si están intercambiados; anotar una excepción si el manual los imprime así.`,
  'torque/slip-at-plug': ({ part, thread, torque, factor, becomes, meant }, say) =>
    `${part}: ${say.quantity(torque)} no es usual para un tapón de rosca ${thread}; ${writeDigits(factor)} son ${say.quantity({ value: Number(becomes.value.toPrecision(3)), unit: becomes.unit })}.${meant === undefined ? '' : ` El dato puede estar en ${writeUnitName(meant, say)}.`} Comprobar el manual antes de usarlo.`,
  'torque/stages-not-rising': ({ part, before, step }, say) =>
    `${part}: ${say.quantity(step)} sigue a ${say.quantity(before)}. Cada etapa debe ser mayor que la anterior.`,
  'torque/turns-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} es una rosca cilíndrica. Las vueltas después del apriete a mano son para roscas cónicas y la arrancarían.`,
  'torque/turns-reversed': ({ part, min, max }) =>
    `${part}: vueltas: el mínimo ${writeDigits(min)} supera el máximo ${writeDigits(max)}. Corregir la hoja de datos.`,
  'torque/large-for-drive': ({ part, drive, torque, limit }, say) =>
    `${part}: ${say.quantity(torque)} es demasiado para un hexágono de ${drive}; se esperarían como máximo aprox. ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })}. Comprobar la unidad.`,
  'torque/fill-and-drain-far-apart': ({ gearcase, high, low }, say) =>
    `${gearcase}: ${say.quantity(high)} en un tapón y ${say.quantity(low)} en el otro difieren mucho. Comprobar las unidades.`,
  'torque/small-for-class': ({ part, thread, propertyClass, torque, load, proof }, say) =>
    `${part}: ${say.quantity(torque)} carga un tornillo (${thread}, clase ${propertyClass}) solo a aprox. el ${say.number(Math.round((100 * load.value) / proof.value))} % de su carga de prueba. Comprobar la unidad y la coma decimal.`,
  'torque/implausible-turns': ({ part, turns }) =>
    `${part}: ${writeDigits(turns)} vueltas después del apriete a mano rajarían la caja. Comprobar la coma decimal.`,
  'torque/implausible-angle': ({ part, angle }, say) =>
    `${part}: ${say.quantity(angle)} es más de una vuelta entera y rompería el tornillo. Comprobar el dato.`,
  'torque/unknown-class': ({ part, propertyClass, meant }) =>
    `${part}: ningún tornillo es de la clase “${propertyClass}”.${meant === undefined ? ' Comprobar el manual.' : ` ¿Se quería decir “${meant}”?`}`,
  // Seals, oils and quantities.
  'seal/crush-washer-reused': ({ part }) =>
    `${part}: la hoja de datos cambia la arandela de sellado solo “on condition”. Al aplastarse se endurece: poner una nueva en cada apertura, o anotar una excepción con la página del manual.`,
  'seal/material-doubtful-in-oil': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/material-not-for-oil': ({ part, material }) =>
    `${part}: el aceite de engranajes destruye ${nameOf(cardWords.sealMaterials, material)}. Comprobar la lista de piezas.`,
  'seal/o-ring-size-differs': ({ part, reason }, say) =>
    `${part}: el número y la medida nombran dos anillos distintos. ${say.reason(reason)}`,
  'seal/washer-does-not-fit': ({ part, reason }, say) => `${part}: ${say.reason(reason)}`,
  'seal/none-at-opening': ({ part }) =>
    `${part}: no se nombra ninguna junta. Nombrar la arandela o el sellador, “none” si el tapón no lleva junta, o “not stated” si el manual no lo dice.`,
  'seal/none-beside-seal': ({ part }) => `${part}: se nombran una junta y “none”. Quitar uno de los dos.`,
  'seal/none-on-parallel-thread': ({ part, thread }) =>
    `${part}: ${thread} es una rosca cilíndrica y no sella por sí sola. Nombrar la arandela; anotar una excepción para un tapón con cono metálico.`,
  'seal/sealant-on-dry-thread': ({ part }) =>
    `${part}: se nombra un sellador de roscas, pero el apriete es para rosca seca. Comprobar el manual.`,
  'seal/o-ring-far-from-plug': ({ part, inside, thread }, say) =>
    `${part}: una junta tórica de ${say.quantity(inside)} interior no es de un tapón ${thread}. Comprobar la lista de piezas.`,
  'seal/cure-of-zero': ({ part }) =>
    `${part}: un curado de cero significa que el aceite puede tocar enseguida el sellador. Escribir “not stated” si el manual no da tiempo.`,
  'oil/additive-counted-twice': ({ additive, volume, refill, dryFill }, say) =>
    `El llenado ${say.quantity(refill)} más ${say.quantity(volume)} de “${additive}” supera el llenado en seco de ${say.quantity(dryFill)}. Parece que el llenado ya incluye el aditivo.`,
  'oil/additive-exceeds-refill': ({ additive, volume, refill }, say) =>
    `${say.quantity(volume)} de “${additive}” es tanto o más que el llenado de ${say.quantity(refill)}. Comprobar la unidad.`,
  'oil/ambient-gap': ({ from, to }, say) =>
    `Entre ${say.quantity(from)} y ${say.quantity(to)} no se permite ningún aceite de esta lista. Comprobar los márgenes.`,
  'oil/unknown-edition': ({ grade, system, edition, known }, say) =>
    `${system}, edición “${edition}”: no se conocen los límites de ${grade}. Ediciones conocidas: ${say.list(known)}.`,
  'oil/unknown-grade': ({ grade, system, others }, say) =>
    `${system} no tiene el grado “${grade}”.${others.length === 0 ? '' : ` ${others.length === 1 ? 'Lo tiene' : 'Lo tienen'} ${say.list(others)}.`}`,
  'oil/viscosity-outside-grade': ({ oil, grade, viscosity }, say) =>
    `${oil}: ${say.quantity(viscosity)} está fuera del grado ${grade}. Comprobar la ficha técnica.`,
  'oil/unknown-category': ({ category }) =>
    `No existe la categoría de servicio “${category}”: los aceites de engranajes son de GL-1 a GL-6. Comprobar el manual.`,
  'fill/portion-larger-than-refill': ({ gearcase, portion, refill }, say) =>
    `${gearcase}: su parte del aceite compartido, ${say.quantity(portion)}, supera el llenado entero de ${say.quantity(refill)}. Comprobar la unidad.`,
  'fill/refill-larger-than-dry-fill': ({ gearcase, refill, dryFill }, say) =>
    `${gearcase}: el llenado ${say.quantity(refill)} supera el llenado en seco ${say.quantity(dryFill)}, aunque siempre queda algo de aceite dentro. Comprobar si están intercambiados.`,
  'fill/implausible-refill': ({ gearcase, refill, limit }, say) =>
    `${gearcase}: un llenado de ${say.quantity(refill)} no es verosímil aquí; se esperarían como máximo aprox. ${say.quantity({ value: Number(limit.value.toPrecision(2)), unit: limit.unit })}. Comprobar la unidad.`,
  'fill/dry-fill-far-above-refill': ({ gearcase, dryFill, refill }, say) =>
    `${gearcase}: el llenado en seco ${say.quantity(dryFill)} es más de cinco veces el llenado de ${say.quantity(refill)}. Comprobar la coma decimal y la unidad.`,
  'fill/minutes-with-engine-running': ({ gearcase }) =>
    `${gearcase}: el nivel no se puede leer con el motor en marcha y a la vez minutos después de parar. Corregir uno de los dos.`,
  'fill/implausible-level-depth': ({ gearcase, below }, say) =>
    `${gearcase}: un nivel ${say.quantity(below)} por debajo del orificio no es verosímil. Comprobar la coma decimal y la unidad.`,
  'spec/implausible-hours': ({ hours }, say) =>
    `${say.quantity({ value: hours, unit: 'h' })} entre dos servicios no es verosímil. Comprobar la coma decimal.`,
  // Logs, toolboxes and stocks.
  'log/date-in-the-future': ({ date, today }, say) =>
    `${say.date(date)} es posterior a hoy, ${say.date(today)}. Comprobar el año y el mes.`,
  'log/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: se repuso con “${oil}”, que no es un aceite permitido (${say.list(permitted)}). Cambiar el aceite antes de que la máquina vuelva a trabajar.`,
  'log/pause-reversed': ({ from, to }, say) =>
    `La pausa acaba el ${say.date(to)}, antes de empezar el ${say.date(from)}.`,
  'log/record-of-other-machine': ({ machine, log, record }) =>
    `El registro “${record}” es de la máquina “${machine}”, pero este es el historial de “${log}”.`,
  'log/unknown-part': ({ id, ...names }, say) =>
    `La hoja de datos no tiene “${id}” aquí.${writeSuggestion(names, say)}`,
  'log/used-before-commissioned': ({ date, commissioned }, say) =>
    `${say.date(date)} es anterior al primer uso, el ${say.date(commissioned)}. Corregir una de las dos fechas.`,
  'log/variant-contradicted': ({ variant, candidates }, say) => {
    const others =
      candidates.length === 0
        ? 'no corresponden a ninguna variante de la hoja de datos'
        : `corresponden a ${say.list(candidates.map((candidate) => `“${candidate}”`))}`
    return variant === undefined
      ? 'El número de serie, el año de modelo y el mercado no corresponden a ninguna variante de la hoja de datos. Comprobar la placa.'
      : `El número de serie, el año de modelo y el mercado excluyen la variante indicada “${variant}”: ${others}. Comprobar la placa.`
  },
  'log/meter-through-pause': ({ meter, first, last }, say) =>
    `La lectura ${withDe(writeMeter(meter))} subió de ${say.number(first)} a ${say.number(last)} durante esta pausa. Comprobar las fechas de la pausa.`,
  'toolbox/implausible-accuracy': ({ wrench, percent }, say) =>
    `${wrench}: ${say.number(percent)} % no es verosímil para una llave dinamométrica. Comprobar su certificado.`,
  'toolbox/calibration-in-the-future': ({ wrench, date, today }, say) =>
    `${wrench}: calibración del ${say.date(date)}, posterior a hoy, ${say.date(today)}. Comprobar el certificado.`,
  'toolbox/declared-range-reversed': ({ wrench, min, max }, say) =>
    `${wrench}: el margen declarado acaba en ${say.quantity(max)}, en su comienzo o por debajo de él, ${say.quantity(min)}.`,
  'toolbox/scale-wrong': ({ wrench, lowest, highest, graduation, unit }, say) =>
    `${wrench}: una escala de ${say.number(lowest)} a ${say.quantity({ value: highest, unit })} en pasos de ${say.number(graduation)} es imposible.`,
  'toolbox/scales-disagree': ({ wrench, first, other }, say) =>
    `${wrench}: una escala acaba en ${say.quantity(first)} y la otra en ${say.quantity(other)}. Las escalas de una llave acaban en el mismo par; comprobar las unidades.`,
  'toolbox/vessel-graduation': ({ vessel, size, mark }, say) =>
    `${vessel}: la graduación o la marca más baja, ${say.quantity(mark)}, supera la capacidad de ${say.quantity(size)}.`,
  'toolbox/implausible-load-rating': ({ tool, rating }, say) =>
    `${tool}: una carga de ${say.quantity(rating)} no es verosímil. Volver a leer la placa: ¿se confundieron toneladas y kilogramos?`,
  'stock/opened-larger-than-size': ({ container, opened, size }, say) =>
    `${container}: quedan ${say.quantity(opened)} en un envase de ${say.quantity(size)}. Anotar aparte los envases llenos, o comprobar la unidad.`,
  'stock/viscosities-swapped': ({ container, kv40, kv100 }, say) =>
    `${container}: ${say.quantity(kv100)} a 100 °C no es menor que ${say.quantity(kv40)} a 40 °C. Al calentarse, el aceite se hace más fluido; comprobar si están intercambiadas.`,
  'stock/implausible-density': ({ container, density }, say) =>
    `${container}: ningún aceite tiene una densidad de ${say.quantity(density)}. Comprobar la unidad.`,
  'stock/implausible-pour-point': ({ container, pourPoint }, say) =>
    `${container}: un punto de fluidez de ${say.quantity(pourPoint)} no es verosímil para un aceite de engranajes. ¿Se perdió el signo menos?`,
  // Service records.
  'record/corrects-itself': ({ id }) =>
    `La corrección de “${id}” vuelve a este registro. Nombrar el registro del servicio mismo.`,
  'record/corrects-unknown-record': ({ id, ...names }, say) =>
    `El historial de esta máquina no tiene ningún registro “${id}” que corregir.${writeSuggestion(names, say)}`,
  'record/date-in-the-future': ({ date, today }, say) =>
    `El registro tiene fecha ${say.date(date)}, posterior a hoy, ${say.date(today)}. Comprobar el año y el mes.`,
  'record/leak-left': ({ gearcase, found }) =>
    `${gearcase}: se cerró aunque ${nameOf(LEAKS, found)}. Un tapón con arandela necesita una arandela nueva, nunca más par; un tapón cónico se puede apretar dentro de sus vueltas.`,
  'record/level-not-right': ({ gearcase, level }) =>
    `${gearcase}: ${LEVELS[level]} antes de que la máquina trabaje.`,
  'record/machine-not-found': ({ id, ...names }, say) =>
    `En este conjunto no hay ningún historial de la máquina “${id}”.${writeSuggestion(names, say)}`,
  'record/metal-in-the-oil': ({ gearcase, found }) =>
    `${gearcase}: ${nameOf(METAL, found)}, pero se volvió a llenar. Parar la máquina y hacer abrir la caja.`,
  'record/oil-not-permitted': ({ gearcase, oil, permitted }, say) =>
    `${gearcase}: se llenó con “${oil}”, que no es un aceite permitido (${say.list(permitted)}). Drenarlo antes de que la máquina trabaje.`,
  'record/part-not-on-machine': ({ part }) =>
    `Esta máquina no tiene “${part}”, por su variante, número de serie, año de modelo o mercado. Comprobar si el registro es de otra máquina.`,
  'record/plug-not-tightened': ({ part }) =>
    `${part}: se abrió, pero no consta el apriete. Comprobar el tapón antes de mover la máquina.`,
  'record/reading-contradicts-log': ({ reason }, say) =>
    `Esta lectura contradice el historial de la máquina. ${say.reason(reason)}`,
  'record/reading-missing': ({ meter }) =>
    `Falta la lectura ${withDe(writeMeter(meter))}; el próximo servicio no se puede contar desde este registro.`,
  'record/refill-not-recorded': ({ gearcase }) =>
    `${gearcase}: cambio de aceite sin cantidad de llenado. Comprobar el nivel y anotar la cantidad.`,
  'record/refill-outside-tolerance': ({ gearcase, refilled, printedRefill, byLevel, reason }, say) =>
    `${gearcase}: se llenó con ${say.quantity(refilled)}, pero la hoja de datos indica ${say.quantity(printedRefill)}: ${writeRefillFix(reason.params['difference'] as Volume, byLevel, say)}`,
  'record/seal-not-new': ({ part, seal, usedAgain }) =>
    usedAgain
      ? `${part}: se reutilizó la pieza (${nameOf(cardWords.seals, seal)}). Debe ser nueva en cada apertura; poner una nueva.`
      : `${part}: se abrió, pero no consta ninguna pieza nueva (${nameOf(cardWords.seals, seal)}). Comprobar el tapón; en caso de duda, poner una nueva.`,
  'record/tightening-method-differs': ({ part, done, required }) =>
    `${part}: apriete por ${done === 'turns' ? 'vueltas' : 'par'}; la hoja de datos indica ${required === 'turns' ? 'vueltas' : 'un par'}.`,
  'record/tightening-not-measured': ({ part, done }) => `${part}: ${UNMEASURED_TEXTS[done]}.`,
  'record/torque-outside-band': ({ part, set, stated, side }, say) =>
    `${part}: ajuste a ${say.quantity(set)}; la hoja de datos indica ${say.quantity(stated)}. ${
      side === 'above'
        ? 'Retirar la pieza, inspeccionar la rosca, poner una arandela nueva si la lleva y volver a apretar.'
        : 'Apretar con el par indicado.'
    }`,
  'record/turns-outside-band': ({ part, turns, min, max }, say) =>
    `${part}: ${say.count(turns, 'vuelta', 'vueltas')} después del apriete a mano; la hoja de datos indica ${max === undefined ? `al menos ${writeDigits(min)}` : `${writeDigits(min)} a ${writeDigits(max)}`}.`,
  'record/unknown-container': ({ id, ...names }, say) =>
    `En este conjunto no hay ningún envase “${id}”.${writeSuggestion(names, say)}`,
  'record/unknown-part': ({ id, ...names }, say) =>
    `La hoja de datos no tiene “${id}” aquí.${writeSuggestion(names, say)}`,
  'record/unknown-tool': ({ id, ...names }, say) =>
    `En este conjunto no hay ninguna llave dinamométrica “${id}”.${writeSuggestion(names, say)}`,
  'record/water-in-the-oil': ({ gearcase }) =>
    `${gearcase}: aceite lechoso. Buscar por dónde entra el agua y volver a cambiar el aceite tras una marcha corta.`,
  'record/wrench-cannot-reach': ({ part, wrench, torque, because }, say) =>
    [
      `${part}: “${wrench}” no se puede ajustar a ${say.quantity(torque)}.`,
      ...because.map((reason) => say.reason(reason)),
      'Volver a apretar con una llave adecuada.',
    ].join(' '),
  'record/drain-not-opened': ({ gearcase }) =>
    `${gearcase}: cambio de aceite sin abrir ningún drenaje. El aceite viejo puede seguir dentro; comprobarlo antes de que la máquina trabaje.`,
  'record/drained-far-below-refill': ({ gearcase, drained, refilled }, say) =>
    `${gearcase}: ${say.quantity(drained)} drenados, ${say.quantity(refilled)} de llenado. O se perdió aceite (buscar la fuga), o quedó aceite viejo dentro (comprobar el nivel).`,
  'record/wrench-out-of-calibration': ({ wrench, calibrated, date }, say) =>
    `${wrench}: última calibración el ${say.date(calibrated)}, así que ya había caducado el ${say.date(date)}. Hacerla ensayar; si no pasa, volver a dar estos pares.`,
  'record/warranty-facts-missing': ({ lacks }, say) =>
    `La garantía exige datos que faltan en este registro: ${say.list(lacks.map((fact) => WARRANTY_FACT_NAMES[fact]))}. Añadirlos con una corrección mientras aún se puedan averiguar.`,
  'record/certificate-expired': ({ wrench, certificate, validTo, date }, say) =>
    `${wrench}: el certificado ${certificate} valía hasta el ${say.date(validTo)}, antes del trabajo del ${say.date(date)}. Nombrar el certificado de ese día, o hacer ensayar la llave.`,
  'record/filter-not-changed': ({ part, change }) =>
    `${part}: no consta que se ${nameOf(FILTER_CHANGES, change)} con el aceite. Hacer el trabajo, o anotarlo.`,
  'record/shield-not-refitted': ({ shield, gearcase }) =>
    `${gearcase}: no consta que “${shield}” se volviera a montar. Comprobar la máquina antes de ponerla en marcha.`,
  'record/other-part-number': ({ part, fitted, stated }) =>
    `${part}: se montó la junta ${fitted}; la hoja de datos indica ${stated}. Comprobar si sirve, o si el fabricante cambió el número.`,
  'record/more-than-container-held': ({ container, used, held }, say) =>
    `${container}: constan ${say.quantity(used)} de este envase, pero en existencias solo había ${say.quantity(held)}. Comprobar el envase y la unidad.`,
}
