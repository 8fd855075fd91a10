import type { AtPart, PartKind, ProcedureCodes, RampObstacle } from '../../procedure/index.js'
import type { Texts } from '../catalogue.js'
import { nameOf } from '../phrases.js'
import { join, quote, SIGNAL_WORDS, withDe, writeFacts } from './words.js'

/** `“drain plug” de “front differential” (left)`; `fallback`, with its article, if no part is named. */
function writePart({ part, gearcase, instance }: AtPart, fallback: string): string {
  const instanceText = instance === undefined ? '' : ` (${instance})`
  if (part === undefined && gearcase !== undefined) return `${quote(gearcase)}${instanceText}`
  if (part === undefined) return fallback
  return gearcase === undefined
    ? `${quote(part)}${instanceText}`
    : `${quote(part)} de ${quote(gearcase)}${instanceText}`
}

/** Joined to “de”: `de “drain plug”`, `del tapón`. */
const writeOfPart = (params: AtPart, fallback: string) => withDe(writePart(params, fallback))

/** The gearcase of the part. */
function writeGearcase({ gearcase, instance }: AtPart): string {
  return gearcase === undefined
    ? 'la caja de engranajes'
    : writePart({ gearcase, ...(instance && { instance }) }, '')
}

const RAMP_OBSTACLES: Readonly<Record<RampObstacle, (part: string) => string>> = {
  'must not run': () => 'esta máquina no debe ponerse en marcha antes de cambiar su aceite.',
  'manual forbids ramps': (part) => `el manual prohíbe las rampas para las ruedas de ${part}.`,
  'axle not known': () => 'la hoja de datos no dice qué eje levantan sus apoyos.',
  'wheel must turn': (part) => `para ${part} tiene que girar una rueda, y sobre rampas las ruedas no giran.`,
  'level needs flat ground': (part) =>
    `${part} tiene que estar a nivel, y con un extremo sobre rampas queda con inclinación.`,
  'level needs stands': (part) => `el manual comprueba el nivel de ${part} sobre caballetes.`,
  'guard is off': (part) => `la protección en ${part} estaría quitada mientras la máquina se mueve.`,
}

/** ` (paso “front-crack-fill”)`, if a step is named. */
function writeStep({ step }: AtPart): string {
  return step === undefined ? '' : ` (paso “${step}”)`
}

const PART_KINDS: Readonly<Record<PartKind, string>> = {
  machine: 'la máquina entera (sin “on”)',
  support: 'un apoyo',
  'secured item': 'un elemento que se asegura',
  axle: 'un eje',
  shield: 'un protector',
  gearcase: 'una caja de engranajes',
  opening: 'una abertura',
  cover: 'una tapa',
  seal: 'una junta',
  'cover seal': 'una junta de tapa',
  filter: 'un filtro',
  'filter seal': 'una junta de filtro',
}

export const procedureTexts: Texts<ProcedureCodes> = {
  'procedure/variant-not-found': (params) =>
    `Solo algunas variantes tienen ${writePart(params, 'esta pieza')}, y ningún paso averigua qué variante es esta máquina${writeStep(params)}. Averiguar primero la variante.`,
  'procedure/manual-not-read': (params) =>
    `El trabajo empieza antes del paso de leer el manual de la máquina${writeStep(params)}. Poner antes ese paso.`,
  'procedure/protection-not-worn': (params) =>
    `El trabajo empieza antes de ponerse guantes y protección ocular${writeStep(params)}. Poner antes ese paso.`,
  'procedure/machine-not-on-level-ground': (params) =>
    `El trabajo empieza antes de estacionar la máquina en suelo llano${writeStep(params)}. Estacionarla primero.`,
  'procedure/engine-running': (params) =>
    `El motor puede seguir en marcha${writeStep(params)}. Pararlo antes de empezar el trabajo.`,
  'procedure/wheels-not-chocked': (params) =>
    `No hay ninguna rueda calzada${writeStep(params)}. Calzar primero las ruedas que quedan en el suelo.`,
  'procedure/machine-not-secured': (params) =>
    `El trabajo empieza antes de asegurar todo lo que nombra la hoja de datos${writeStep(params)}. Asegurarlo primero.`,
  'procedure/machine-not-secured-for-run': (params) =>
    `La máquina se pone en marcha antes de asegurar todo lo que la hoja de datos nombra para ello${writeStep(params)}. Asegurarlo primero.`,
  'procedure/run-without-oil': (params) =>
    `La máquina se pone en marcha con una caja de engranajes drenada${writeStep(params)}: los engranajes giran en seco. Verter antes el aceite nuevo.`,
  'procedure/lowered-with-drain-open': (params) =>
    `La máquina se baja con un tapón de drenaje o una tapa fuera${writeStep(params)}: sale aceite y la abertura queda fuera de alcance. Cerrarla antes.`,
  'procedure/chocks-or-pan-in-place': (params) =>
    `La máquina se pone en marcha con los calzos o la bandeja de drenaje puestos${writeStep(params)}. Retirarlos antes.`,
  'procedure/guard-not-refitted': (params) =>
    `La máquina se pone en marcha sin la protección de sus piezas móviles${writeStep(params)}. Montar antes la protección.`,
  'procedure/chocks-on-lifted-wheels': (params) =>
    `Los calzos están en ruedas que se levantan del suelo${writeStep(params)}. Calzar las ruedas de un eje que queda en el suelo.`,
  'procedure/axle-not-chocked': (params) =>
    `Solo están calzados algunos de los ejes que quedan en el suelo${writeStep(params)}. Calzar por ambos lados cada rueda que queda en el suelo.`,
  'procedure/jack-as-support': (params) =>
    `Se trabaja bajo una máquina que solo sostiene el gato${writeStep(params)}. Ponerla antes sobre caballetes: un gato eleva, no sostiene.`,
  'procedure/ramps-and-jack': (params) =>
    `La máquina se eleva con el gato mientras está sobre rampas${writeStep(params)}, y puede rodar y caer de ellas. Bajarla antes de las rampas.`,
  'procedure/ramps-not-permitted': (params) =>
    `El manual no permite estas ruedas sobre rampas${writeStep(params)}. Usar el gato y caballetes.`,
  'procedure/driven-with-plug-loose': (params) =>
    `La máquina baja de las rampas con un tapón, una tapa o un filtro flojo${writeStep(params)}. Apretarlo antes; un tapón de llenado o de nivel puede ir enroscado a mano.`,
  'procedure/machine-not-raised': (params) =>
    `La máquina no se ha elevado${writeStep(params)}. Elevarla antes, o quitar este paso.`,
  'procedure/drain-not-raised': (params) =>
    `Se drena aceite ${writeOfPart(params, 'la caja de engranajes')} antes de elevar la máquina para ello${writeStep(params)}. Elevarla antes: con el tapón fuera ya es tarde.`,
  'procedure/run-on-stands': (params) =>
    `La máquina se pone en marcha o se mueve mientras está elevada${writeStep(params)}. Bajarla antes.`,
  'procedure/machine-must-not-run': (params) =>
    `La máquina se pone en marcha con el aceite viejo, aunque un suceso registrado lo prohíbe${writeStep(params)}. No ponerla en marcha ni remolcarla: sacarla empujando o con cabrestante y transportarla.`,
  'procedure/wheel-not-clear': (params) =>
    `La rueda ${writeOfPart(params, 'la caja de engranajes')} no puede girar mientras está en el suelo${writeStep(params)}. Elevar antes la máquina.`,
  'procedure/wheel-turned-with-plug-out': (params) =>
    `Se gira la rueda mientras está abierto: ${writePart(params, 'un tapón')}${writeStep(params)}. Enroscarlo antes a mano.`,
  'procedure/wrong-attitude': (params) =>
    `La máquina no está en la posición que exige el manual para el nivel ${writeOfPart(params, 'la caja de engranajes')}${writeStep(params)}. Bajarla, o ponerla sobre sus caballetes, como dice la hoja de datos.`,
  'procedure/area-not-cleaned': (params) =>
    `Se abre ${writePart(params, 'la abertura')} antes de limpiar la zona de alrededor${writeStep(params)}. Limpiarla antes, o cae suciedad dentro.`,
  'procedure/shield-in-the-way': (params) =>
    `El trabajo en ${writePart(params, 'la caja de engranajes')} empieza con el protector puesto, que estorba${writeStep(params)}. Quitar antes el protector.`,
  'procedure/fill-not-cracked': (params) =>
    `Se abre ${writePart(params, 'el drenaje')} antes de saber que el tapón de llenado cede${writeStep(params)}. Aflojar antes el tapón de llenado: una caja drenada que no se puede llenar deja la máquina parada.`,
  'procedure/fill-plug-loose': (params) =>
    `El tapón de llenado sigue flojo al abrir ${writePart(params, 'el drenaje')}${writeStep(params)}. Volver a enroscarlo antes a mano.`,
  'procedure/plug-not-cracked': (params) =>
    `Sigue sin aflojar: ${writePart(params, 'el tapón')}${writeStep(params)}. Aflojarlo antes.`,
  'procedure/no-pan': (params) =>
    `No hay bandeja debajo ${writeOfPart(params, 'la abertura')} al abrirse${writeStep(params)}. Poner antes la bandeja.`,
  'procedure/opening-closed': (params) =>
    `Sin abrir: ${writePart(params, 'la abertura')}${writeStep(params)}. Abrir antes.`,
  'procedure/drain-not-out': (params) =>
    `El drenaje empieza con la pieza puesta: ${writePart(params, 'el tapón de drenaje')}${writeStep(params)}. Retirarla antes.`,
  'procedure/part-not-removed': (params) =>
    `Sin quitar: ${writePart(params, 'la pieza')}; este paso no es posible${writeStep(params)}. Quitar antes.`,
  'procedure/fill-not-vented': (params) =>
    `El aceite drena por ${writePart(params, 'el drenaje')} con la abertura de llenado cerrada${writeStep(params)}. Retirar el tapón de llenado para que entre aire.`,
  'procedure/oil-not-warm': (params) =>
    `El aceite se drena frío${writeStep(params)}. Entibiarlo antes, para que arrastre la suciedad: tibio, no caliente.`,
  'procedure/sample-not-taken': (params) =>
    `No se toma muestra de aceite de ${writeGearcase(params)}${writeStep(params)}, pero el servicio la exige. Tomarla a mitad del chorro.`,
  'procedure/sample-too-late': (params) =>
    `El aceite de ${writeGearcase(params)} ya ha salido${writeStep(params)}. Tomar la muestra mientras sale; el aceite de la bandeja no sirve de muestra.`,
  'procedure/breather-not-cleared': (params) =>
    `El respiradero de ${writeGearcase(params)} no se ha comprobado${writeStep(params)}. Comprobar antes que está libre.`,
  'procedure/wrong-wheel-mark': (params) =>
    `La rueda no está en la posición que exige ${writePart(params, 'la abertura')}${writeStep(params)}. Girarla antes hasta su marca, con el tapón puesto.`,
  'procedure/magnet-not-inspected': (params) =>
    `El imán ${writeOfPart(params, 'la pieza')} no se ha inspeccionado${writeStep(params)}. Inspeccionarlo antes de montar. Si tiene virutas o trozos, no llenar.`,
  'procedure/magnet-not-cleaned': (params) =>
    `El imán ${writeOfPart(params, 'la pieza')} se monta sucio${writeStep(params)}. Limpiarlo antes.`,
  'procedure/filter-before-drain': (params) =>
    `Se quita ${writePart(params, 'el filtro')} antes de drenar el aceite${writeStep(params)}. Drenar antes, o todo el aceite sale por ahí.`,
  'procedure/filter-not-reached': (params) =>
    `Detrás de un tapón o una tapa sin quitar: ${writePart(params, 'el filtro')}${writeStep(params)}. Quitar eso antes.`,
  'procedure/filter-not-inspected': (params) =>
    `No se ha buscado metal en ${writePart(params, 'el filtro')}${writeStep(params)}. Hacerlo antes. Si contiene virutas o trozos, no llenar.`,
  'procedure/filter-not-cleaned': (params) =>
    `Se vuelve a montar sin limpiar: ${writePart(params, 'el colador')}${writeStep(params)}. Limpiar antes.`,
  'procedure/filter-left-out': (params) =>
    `Se cierra ${writePart(params, 'el tapón o la tapa')} con el filtro de detrás fuera${writeStep(params)}. Montar antes el filtro.`,
  'procedure/old-seal-not-removed': (params) =>
    `La junta vieja ${writeOfPart(params, 'la pieza')} sigue puesta${writeStep(params)}. Quitarla antes y comprobar que no está pegada a la caja.`,
  'procedure/face-not-wiped': (params) =>
    `La cara de sellado ${writeOfPart(params, 'la pieza')} no se ha limpiado${writeStep(params)}. Limpiarla antes.`,
  'procedure/seal-not-renewed': (params) =>
    `Se monta ${writePart(params, 'la pieza')} sin la junta que exige la hoja de datos${writeStep(params)}. Poner una junta nueva, aplicar sellador o inspeccionar la junta vieja, como dice la hoja. Un tapón aflojado cuenta como abierto.`,
  'procedure/part-not-fitted': (params) =>
    `Se aprieta ${writePart(params, 'la pieza')} antes de montarse con su junta${writeStep(params)}. Montar antes.`,
  'procedure/oil-not-drained': (params) =>
    `El aceite viejo ${writeOfPart(params, 'la caja de engranajes')} nunca se drena${writeStep(params)}. Drenarlo antes de verter aceite nuevo.`,
  'procedure/drain-left-closed': (params) =>
    `Otro drenaje ${writeOfPart(params, 'la caja de engranajes')} nunca se abre${writeStep(params)}. La hoja de datos lo nombra en “also”: drenar también ahí antes de verter aceite nuevo.`,
  'procedure/oil-not-inspected': (params) =>
    `El aceite viejo de ${writeGearcase(params)} no se inspecciona${writeStep(params)}. Inspeccionarlo mientras la caja sigue abierta.`,
  'procedure/oil-not-measured': (params) =>
    `El aceite nuevo para ${writeGearcase(params)} no se mide${writeStep(params)}. Medir antes la cantidad de llenado.`,
  'procedure/additive-missing': (params) =>
    `El aceite para ${writePart(params, 'la caja de engranajes')} entra sin el aditivo que exige la hoja de datos${writeStep(params)}. Añadirlo antes.`,
  'procedure/oil-poured-twice': (params) =>
    `La cantidad de llenado entera entra en ${writeGearcase(params)} por segunda vez${writeStep(params)}: demasiado aceite hace espuma y expulsa las juntas. Quitar este paso, o drenar antes.`,
  'procedure/drain-not-tightened': (params) =>
    `Se vierte aceite por ${writePart(params, 'la abertura de llenado')} con un tapón, una tapa o un filtro de abajo sin apretar${writeStep(params)}. Apretarlo antes.`,
  'procedure/cover-not-cured': (params) =>
    `Se vierte aceite por ${writePart(params, 'la abertura de llenado')} antes de que cure el sellador de la tapa${writeStep(params)}. Esperar antes el curado.`,
  'procedure/cover-not-tightened': (params) =>
    `El sellador ${writeOfPart(params, 'la tapa')} cura antes de apretar la tapa${writeStep(params)}. Apretarla antes.`,
  'procedure/hose-not-empty': (params) =>
    `Todavía hay aceite en la manguera${writeStep(params)}. Esperar a que se vacíe antes de comprobar el nivel o de cerrar ${writePart(params, 'la abertura de llenado')}.`,
  'procedure/oil-not-settled': (params) =>
    `El nivel en ${writePart(params, 'la abertura')} se comprueba antes de que repose el aceite${writeStep(params)}. Dejarlo reposar antes.`,
  'procedure/level-not-checked': (params) =>
    `El nivel en ${writePart(params, 'la abertura de nivel')} nunca se comprueba${writeStep(params)}. Comprobarlo con el tapón fuera.`,
  'procedure/level-not-rechecked': (params) =>
    `El nivel en ${writePart(params, 'la abertura de nivel')} no se vuelve a comprobar tras la marcha${writeStep(params)}. Volver a comprobarlo: la marcha reparte el aceite.`,
  'procedure/oil-not-topped-up': (params) =>
    `Ningún paso repone aceite después de la segunda comprobación ${writeOfPart(params, 'el nivel')}${writeStep(params)}. Añadir ese paso.`,
  'procedure/part-not-tightened': (params) =>
    `Sin cerrar o sin apretar: ${writePart(params, 'una pieza que se abrió')}${writeStep(params)}. Apretar antes.`,
  'procedure/gearcase-not-wiped': (params) =>
    `Se buscan fugas en ${writePart(params, 'la caja de engranajes')} antes de limpiarla${writeStep(params)}. Limpiarla antes: el aceite derramado oculta una fuga.`,
  'procedure/leaks-not-checked': (params) =>
    `No se buscan fugas en ${writePart(params, 'las piezas abiertas')}${writeStep(params)}. Buscarlas cuando todo esté apretado.`,
  'procedure/leaks-not-checked-after-run': (params) =>
    `No se buscan fugas en ${writePart(params, 'las piezas abiertas')} tras la marcha${writeStep(params)}. Volver a buscarlas: el aceite tibio escapa con más facilidad.`,
  'procedure/filter-not-changed': (params) =>
    `Un filtro o colador ${writeOfPart(params, 'la caja de engranajes')} nunca se quita. Cambiarlo o limpiarlo con el aceite fuera.`,
  'procedure/oil-not-refilled': (params) =>
    `Se drena ${writePart(params, 'la caja de engranajes')} y nunca se llena. Verter el aceite nuevo antes de montar los tapones.`,
  'procedure/no-short-run': (params) =>
    `La hoja de datos exige una segunda comprobación del nivel ${writeOfPart(params, 'la caja de engranajes')} tras una marcha corta, y no hay marcha. Añadir la marcha y la comprobación.`,
  'procedure/shield-left-off': (params) =>
    `Nunca se vuelve a montar: ${writePart(params, 'un protector')}. Montarlo.`,
  'procedure/machine-not-lowered': () => 'La máquina se queda elevada. Bajarla al suelo al final.',
  'procedure/used-oil-left': () =>
    'Queda aceite usado en la bandeja. Llevarlo en un recipiente cerrado con el letrero de aceite usado.',
  'procedure/work-not-recorded': () =>
    'El trabajo no se anota después de apretar la última pieza. Anotarlo al final.',
  'procedure/unknown-action': ({ step, action }) =>
    `Paso “${step}”: acción desconocida “${action}”. Usar una de la tabla de acciones.`,
  'procedure/duplicate-step-id': ({ step }) => `Id de paso repetido “${step}”. Dar a cada paso un id único.`,
  'procedure/wrong-part': ({ step, action, required }) =>
    `Paso “${step}”: “${action}” se aplica a ${join(
      required.map((kind) => nameOf(PART_KINDS, kind)),
      'o',
    )}. Corregir “on”.`,
  'procedure/unknown-part': ({ step, on }) =>
    `El paso “${step}” apunta a ${on}, que no es una pieza de la hoja de datos. Corregir el puntero.`,
  'procedure/instance-missing': ({ step, gearcase, known }, say) =>
    `El paso “${step}” no dice a qué unidad de ${quote(gearcase)} se refiere: ${say.list(known)}. Nombrar la unidad.`,
  'procedure/unknown-instance': ({ step, instance, gearcase, known }, say) =>
    known.length === 0
      ? `El paso “${step}” nombra la unidad “${instance}”, pero ${gearcase === undefined ? 'solo hay una pieza así' : `${quote(gearcase)} es única`}. Quitar la unidad.`
      : `El paso “${step}” nombra la unidad “${instance}”; ${gearcase === undefined ? 'la caja de engranajes' : quote(gearcase)} tiene ${say.list(known)}.`,
  'procedure/wheel-mark-missing': (params) =>
    `El paso no dice dónde debe estar la marca de la rueda${writeStep(params)}. Nombrar la marca de la rueda.`,
  'procedure/part-not-on-this-machine': (params) =>
    `Esta máquina no tiene ${writePart(params, 'la pieza')}${writeStep(params)}. Quitar el paso.`,
  'procedure/figure-missing': ({ step, name, pointer }) =>
    `El paso “${step}” no tiene “${name}”. Apuntarlo a ${pointer}.`,
  'procedure/wrong-figure': ({ step, name, pointer, found }) =>
    `El paso “${step}” apunta su “${name}” a ${found}, que es de otra pieza. Apuntarlo a ${pointer}.`,
  'procedure/dangling-pointer': ({ step, name, found }) =>
    `El paso “${step}” apunta su “${name}” a ${found}, que no está en la hoja de datos. Corregir o quitar el puntero.`,
  'procedure/other-sheet': ({ named, namedRevision, sheet, revision }) =>
    `El procedimiento se escribió para la hoja “${named}”, revisión ${namedRevision}; esta es “${sheet}”, revisión ${revision}. Comprobarlo con la hoja que nombra, o revisarlo y nombrar esta hoja.`,
  'procedure/unknown-service': ({ service, known }, say) =>
    `La hoja de datos no tiene el servicio “${service}”${known.length === 0 ? '' : `; tiene ${say.list(known)}`}.`,
  'procedure/only-without-match': ({ service, gearcase, instance }) =>
    `“only” nombra el servicio “${service}” en “${gearcase}”${instance === undefined ? '' : ` (${instance})`}, que no es parte de este trabajo. Corregir los ids o quitar la entrada.`,
  'procedure/sample-not-possible': ({ service, gearcase }) =>
    `El servicio “${service}” exige una muestra de aceite de “${gearcase}”, pero solo se puede tomar en un cambio de aceite por un tapón de drenaje.`,
  'procedure/service-not-for-this-machine': ({ service }) =>
    `El servicio “${service}” no se aplica a esta máquina; no se escriben pasos para él.`,
  'procedure/part-not-known': ({ part, missing }, say) =>
    `No se sabe si esta máquina tiene ${quote(part)}: depende ${say.list(writeFacts(missing).map(withDe))}. Mirar primero la máquina, como dicen los pasos.`,
  'procedure/oil-owner-missing': ({ part }) =>
    `${quote(part)} comparte el aceite de una caja que no está en la hoja de datos, así que no se pueden escribir pasos.`,
  'procedure/no-fill-opening': ({ gearcase }) =>
    `${quote(gearcase)} no tiene abertura de llenado en esta máquina, así que no se pueden escribir pasos.`,
  'procedure/no-way-to-empty': ({ gearcase }) =>
    `La hoja de datos no da ninguna forma de vaciar ${quote(gearcase)} en esta máquina. Añadirla en “emptying”.`,
  'procedure/no-level-opening': ({ gearcase }) =>
    `${quote(gearcase)} no tiene abertura de nivel en esta máquina. Su nivel no se puede comprobar.`,
  'procedure/no-supports': ({ gearcase }) =>
    `El trabajo en ${quote(gearcase)} necesita la máquina elevada, pero la hoja de datos no nombra apoyos. Añadirlos en “access”.`,
  'procedure/supports-on-another-axle': ({ gearcase }) =>
    `Los apoyos de ${quote(gearcase)} levantan otro eje, así que se levantarían las ruedas equivocadas. Corregir su eje, o los apoyos en “access”.`,
  'procedure/wheel-on-the-ground': ({ part, gearcase }) =>
    `${quote(part)} de ${quote(gearcase)} gira con su rueda, y según la hoja de datos se llega desde el suelo: se hace rodar la máquina hasta que la marca esté en posición.`,
  'procedure/drain-left-out': ({ part, gearcase }) =>
    `${quote(part)} de ${quote(gearcase)} es un drenaje, pero ninguna forma de vaciar lo nombra, así que ningún paso lo abre. Puede quedar aceite viejo dentro, y la cantidad indicada sería entonces demasiada. Añadirlo en “emptying”, o en “also” de otro drenaje que se abra.`,
  'procedure/attitude-not-stated': ({ gearcase }) =>
    `No se indica la posición de la máquina para comprobar el nivel de ${quote(gearcase)}. Ver el manual.`,
  'procedure/ramps-not-possible': ({ because, part }) =>
    `No se pueden usar rampas: ${RAMP_OBSTACLES[because](part === undefined ? 'la máquina' : quote(part))} Elevarla sobre caballetes.`,
  'procedure/ramps-not-stated': ({ part }) =>
    `El manual no dice si ${quote(part)} puede subir a rampas. Preguntar antes de usar rampas.`,
  'procedure/second-lift': ({ gearcase }) =>
    `La segunda comprobación del nivel de ${quote(gearcase)}, tras la marcha, exige elevar la máquina otra vez.`,
  'procedure/caution-machine-may-move': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Una máquina que rueda puede aplastar. Poner el freno de estacionamiento, sacar la llave de contacto, calzar las ruedas.`,
  'procedure/caution-must-not-run': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Los engranajes que giran en agua, con suciedad o sin aceite se destruyen en minutos. No poner en marcha ni remolcar la máquina hasta cambiar el aceite de todas las cajas afectadas.`,
  'procedure/caution-exhaust': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Los gases de escape matan. Poner el motor en marcha al aire libre o conducir los gases al exterior.`,
  'procedure/caution-lifting': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Una máquina elevada puede caer y matar. Mantenerse apartado mientras se mueve el gato; nunca trabajar bajo un gato.`,
  'procedure/caution-parking-brake': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Un freno de estacionamiento que actúa en el eje levantado o en su transmisión puede no retener. Solo retienen las ruedas calzadas en el suelo.`,
  'procedure/caution-stands': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Un caballete débil o que resbala deja caer la máquina. Usar caballetes de carga suficiente en suelo firme; empujar la máquina para probarlos.`,
  'procedure/caution-ramps': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Una máquina que rueda o vuelca desde las rampas puede matar. Usar rampas más anchas que los neumáticos, en suelo firme y llano y con carga suficiente para la máquina. Que nadie esté delante ni detrás mientras se mueve. No trabajar debajo antes de calzar las ruedas que están en el suelo.`,
  'procedure/caution-hot-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: El aceite caliente quema. Dejar que se enfríe hasta que esté tibio; apartar la cara y las manos.`,
  'procedure/caution-oil-on-skin': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: El aceite usado daña la piel. Usar guantes; después, lavarse con jabón.`,
  'procedure/caution-wheel-turns': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: La otra rueda puede girar también y atrapar una mano. Que nadie esté cerca de ella.`,
  'procedure/caution-rolling': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Una máquina que rueda puede aplastar. Que nadie esté cerca, una persona al freno, y rodar solo en suelo llano.`,
  'procedure/caution-chips': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Virutas, escamas o trozos en el aceite o en el imán indican daños dentro. No volver a llenar; hacer inspeccionar la caja.`,
  'procedure/caution-used-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: El aceite usado contamina el suelo y el agua. Guardarlo en un recipiente en buen estado, cerrado y con letrero.`,
  'procedure/caution-weeping-washer': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Un tapón que rezuma por su junta necesita una junta nueva, nunca más par.`,
  'procedure/caution-weeping-taper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Un tapón cónico que rezuma se puede girar más, pero solo dentro de las vueltas que da el manual.`,
  'procedure/caution-sharp-scraper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Los rascadores y las arandelas pegadas cortan. Rascar alejándose de la mano; no rayar la cara de sellado.`,
  'procedure/caution-shield-stays': ({ signal, shield }) =>
    `${SIGNAL_WORDS[signal]}: ${quote(shield)} se queda en su sitio. Llegar al tapón por su agujero y limpiar el aceite que le caiga encima.`,
}
