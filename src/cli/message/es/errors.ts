import type { ErrorTexts } from '../errorTexts.js'
import { joinOr } from './count.js'

const WRITE_ERRORS: Readonly<Record<string, string>> = {
  EACCES: 'sin permiso',
  EPERM: 'sin permiso',
  EROFS: 'el disco es de solo lectura',
  ENOSPC: 'el disco está lleno',
  EDQUOT: 'la cuota de disco está agotada',
  EFBIG: 'el archivo sería demasiado grande',
  EIO: 'error del disco',
  EISDIR: 'es una carpeta',
  ENOTDIR: 'se esperaba una carpeta, se encontró un archivo',
  EEXIST: 'se esperaba una carpeta, se encontró un archivo',
  ELOOP: 'sus enlaces forman un círculo',
  ENAMETOOLONG: 'el nombre es demasiado largo',
}
const KINDS = {
  folder: 'una carpeta',
  pipe: 'una tubería',
  socket: 'un socket',
  device: 'un dispositivo',
} as const
const METERS = { hours: 'horas', distance: 'distancia' } as const

const suggest = (suggestion: string): string => (suggestion === '' ? '' : `; ¿quiso decir ${suggestion}?`)

/** The errors of the command line in Spanish. */
export const errors: ErrorTexts = {
  asWritten: ({ text }) => text,
  programError: ({ problem }) =>
    `error en el programa, no en los archivos: ${problem}\nSe ruega comunicarlo con la orden y los archivos.`,

  unknownCommand: ({ name, suggestion }) =>
    `orden desconocida ${name}${suggestion === '' ? '; ver drivetrain-service help' : suggest(suggestion)}`,
  unknownOption: ({ option, suggestion, options }) =>
    `${option} es desconocida${suggest(suggestion)} (opciones: ${options})`,
  otherCommandsOption: ({ option, suggestion, options }) =>
    `${option} no es una opción de esta orden${suggest(suggestion)} (opciones: ${options})`,
  optionNeedsValue: ({ option }) => `${option}: se esperaba un valor`,
  optionTakesNoValue: ({ option }) => `${option}: no se esperaba ningún valor`,
  notOneOf: ({ given, expected }) => `${given}: se esperaba uno de ${expected}`,
  notADate: ({ given }) => `${given}: se esperaba una fecha como 2023-10-06`,
  notANumber: ({ given }) => `${given}: se esperaba un número`,
  untilBeforeSince: ({ given, since }) => `${given}: se esperaba ${since} o una fecha posterior`,
  badTime: ({ given }) => `${given}: se esperaba un tiempo como 0:14 o 1:02:03.5`,
  badPercentage: ({ given }) => `${given}: se esperaba un porcentaje entre 0 y 100, sin incluirlos`,
  badRate: ({ given }) => `${given}: se esperaba un importe y una moneda, por ejemplo "65.50 EUR"`,
  badTemperature: ({ given }) => `${given}: se esperaba una temperatura como 6degC o 43degF`,
  temperatureOutOfRange: ({ given }) => `${given}: se esperaba de -100 degC a 100 degC`,
  badEnding: ({ given, endings }) => `${given}: se esperaba un nombre que acabe en ${joinOr(endings)}`,
  otherFormat: ({ given, format }) => `${given}: no se puede usar con --format ${format}`,
  missingOption: ({ command, option, example }) =>
    `${command}: escribir ${option}, por ejemplo ${option} ${example}`,
  missingValue: ({ command, example }) =>
    `${command}: se esperaba un valor, por ejemplo ${command} ${example}`,

  noSuchFile: ({ path }) => `${path}: no existe tal archivo o carpeta`,
  folderNotFile: ({ path }) => `${path}: se esperaba un archivo, se encontró una carpeta`,
  mayNotRead: ({ path }) => `${path}: sin permiso de lectura`,
  cannotRead: ({ path, problem }) => `${path}: no se puede leer (${problem})`,
  noDocumentFile: () => 'no se encontró ningún archivo .json o .yaml',
  pipe: ({ path }) => `${path} es una tubería o un dispositivo; para leerlo, usar - < ${path}`,
  noMatch: ({ pattern }) => `${pattern}: ningún archivo o carpeta coincide`,
  notJson: ({ path }) => `${path}: no es JSON`,
  notABaseline: ({ path }) =>
    `${path} no es una lista de avisos aceptados: escribir una con check --write-baseline`,
  fileExists: ({ path }) => `${path} ya existe; elegir otro nombre o borrarlo antes`,
  cannotWrite: ({ path, code }) => `${path}: no se puede escribir (${WRITE_ERRORS[code] ?? code})`,
  otherDocument: ({ path, found, expected }) =>
    `${path} es ${found === '' ? 'otro archivo' : found}, no ${expected === '' ? 'un resultado anterior' : expected}: elegir otro nombre; no se escribió nada`,
  beingWritten: ({ path, holder }) =>
    `${path}: ${holder === '' ? 'otro proceso' : `el proceso ${holder}`} lo está escribiendo; intentarlo de nuevo`,
  diskTooSlow: ({ path }) => `${path}: el disco es demasiado lento; no se escribió nada`,
  notAFile: ({ path, kind }) => `${path}: es ${KINDS[kind]}, no un archivo; no se escribió nada`,
  notConfirmed: ({ path, code }) => `${path}: escrito, pero el disco no lo confirmó (${code})`,
  changedMeanwhile: ({ path }) => `otro programa cambió ${path} mientras tanto; intentarlo de nuevo`,
  notThisLog: ({ path, id }) =>
    `${path} no es el historial ${id}, o no se puede leer: elegir otro nombre; no se escribió nada`,
  copyWithoutRecord: ({ path, id }) =>
    `${path} es otra copia del historial, sin el registro ${id}; no se escribió nada`,
  copyWithoutTopUp: ({ path, date }) =>
    `${path} es otra copia del historial, sin la reposición del ${date}; no se escribió nada`,
  copyWithoutReading: ({ path, date }) =>
    `${path} es otra copia del historial, sin la lectura del ${date}; no se escribió nada`,

  noLog: () => 'ningún historial entre los archivos',
  noLogWithId: ({ id }) => `ningún historial con el identificador ${id} entre los archivos`,
  severalLogs: ({ ids, count: logs }) =>
    `se encontraron ${logs} historiales: elegir uno con --machine ${ids.replaceAll(', ', ' o ')}`,
  sheetNotFound: ({ name, id, revision, found }) =>
    `${name}: la hoja ${id} revision ${revision} no está entre los archivos (${found === '' ? 'ninguna hoja' : found})`,
  severalToolboxes: () => 'más de una caja de herramientas entre los archivos',
  severalStocks: () => 'más de unas existencias entre los archivos',
  oneProcedure: ({ given, count: found }) =>
    `${given}: se esperaba un procedimiento, se encontraron ${found}`,
  oneSheet: ({ given, count: found }) => `${given}: se esperaba una hoja de datos, se encontraron ${found}`,
  oneLog: ({ given, count: found }) => `${given}: se esperaba un historial, se encontraron ${found}`,
  oneRecord: ({ given, count: found }) => `${given}: se esperaba un registro, se encontraron ${found}`,
  noOilChange: ({ given }) => `${given}: la hoja no tiene ningún cambio de aceite de este cárter`,

  nameMachine: ({ command }) => `${command}: indicar los archivos o la carpeta de una máquina`,
  nameLogAndSheet: ({ command }) => `${command}: indicar el historial y su hoja de datos, o su carpeta`,
  nameLogsAndSheets: ({ command }) =>
    `${command}: indicar historiales y sus hojas de datos, o carpetas con ellos`,
  nameFilesToCheck: () => 'check: indicar los archivos o carpetas que comprobar',
  dryRunNeedsFix: () => 'check: --dry-run necesita --fix',
  nameLogsOrRows: () =>
    'due: indicar historiales y sus hojas de datos, una carpeta con ellos, o - para filas de la entrada estándar',
  oneLinesFile: ({ count: files }) => `due: se esperaba un archivo .jsonl o -, se encontraron ${files}`,
  inputTwice: () => 'due: las líneas y una hoja no pueden venir ambas de la entrada estándar',
  noSheet: ({ command }) => `${command}: ninguna hoja de datos entre los archivos`,
  rowsAreShort: () =>
    'due: --brief, --format csv y --format summary necesitan historiales y una hoja; las filas ya tienen respuestas cortas',
  nameLogs: () => 'used-oil: indicar historiales, o carpetas con ellos',
  nameCardFolder: () => 'card: indicar la carpeta para las fichas con --out CARPETA',
  namePaperFolder: () => 'card: indicar la carpeta para los papeles con --out CARPETA',
  nameSheets: () => 'card: indicar hojas de datos, o carpetas con ellas',
  paperNeedsFiles: ({ paper }) => `card: --paper ${paper} necesita archivos o carpetas`,
  differencesNeedSheet: () => 'card: --paper differences necesita una hoja de datos',
  twoSheetsOneFile: ({ name }) => `card: dos hojas se escribirían en ${name}`,
  notARecord: ({ name, id }) => `${name} no es un registro de ${id}`,
  noVisit: ({ id }) => `el historial de ${id} no tiene ningún registro de una visita`,
  noSuchRecord: ({ record, id, latest }) =>
    `--record ${record}: el historial de ${id} no tiene tal registro; los últimos son ${latest}`,
  noServiceDue: () => 'procedure: no hay ningún servicio pendiente; elegir uno con --service',
  logOrSheet: () => 'procedure: se esperaba un historial y su hoja, o una hoja y --service',
  noNewRevision: ({ id }) => `procedure: se esperaba la nueva revisión de la hoja ${id} entre los archivos`,
  captionsNeedTimes: () =>
    'cues: los subtítulos necesitan --starts TIEMPOS para un archivo, o --out CARPETA para un archivo por escena',
  startsCount: ({ scenes, starts }) =>
    `--starts: se esperaba un tiempo para cada una de las ${scenes} escenas, se encontraron ${starts}`,
  startsTooEarly: ({ start }) =>
    `--starts ${start}: demasiado pronto; los subtítulos de la escena anterior necesitan más tiempo`,
  noSharedSheet: () => 'compare: se esperaba la hoja de ambos procedimientos entre los archivos',
  nothingToCompare: () =>
    'compare: se esperaban dos hojas, dos procedimientos con su hoja, o una hoja de datos',
  onlyWithFromPlan: () => 'record: --service y --ambient solo se pueden usar con --from-plan',
  nameRecord: () =>
    'record: indicar el registro, su historial, su hoja y la caja de herramientas, o su carpeta',
  logOfRecordMissing: ({ id }) => `record: el historial de la máquina ${id} no está entre los archivos`,
  fromPlanFormat: ({ format }) => `record --from-plan --format ${format}: el registro es YAML para rellenar`,
  onlyWithTopUp: () => 'record: --at y --on solo se pueden usar con --top-up',
  notWithTopUp: () => 'record: --from-plan, --service y --ambient no se pueden usar con --top-up',
  noMeter: ({ given, meter }) => `${given}: el historial no tiene contador de ${METERS[meter]}`,
  badTopUp: ({ given }) =>
    `${given}: se esperaba un volumen y un aceite, por ejemplo "50 mL of gear oil 80W-90"`,
  zeroTopUp: ({ given }) => `${given}: se esperaba un volumen por encima de cero`,
  sheetOfProcedureMissing: ({ id, revision }) =>
    `repair: la hoja ${id} revision ${revision} no está entre los archivos`,
  onlySheetIsTable: () => 'new: solo una hoja de datos puede ser una tabla',
  onlyForSheet: () => 'new: --gearcases, --variants y --from solo se pueden usar para una hoja de datos',
  onlyForLog: () => 'new: --sheet solo se puede usar para un historial',
  notWithFrom: () =>
    'new: --gearcases, --variants y --unit no se pueden usar con --from: se copian de la hoja',
  badIds: ({ given }) =>
    `${given}: se esperaban identificadores distintos de minúsculas, cifras y guiones, por ejemplo front,rear`,
  badExampleUnit: ({ given }) =>
    `${given}: se esperaba una unidad de par, volumen, distancia o temperatura, por ejemplo lbf.ft o qt_us`,
  nameTelematics: () =>
    'import: indicar el archivo de telemática y el historial, en este orden; o páginas y tablas, y una carpeta de historiales',
  notALog: ({ path }) => `import: se esperaba un historial, se encontró ${path}`,
  severalMachines: ({ number, count: machines }) => `import: ${machines} máquinas tienen el número ${number}`,
  noMachine: ({ number, known }) =>
    `import: ninguna máquina tiene el número ${number} (${known}); elegir una con --equipment`,
  noSerial: ({ known }) =>
    `import: el historial no tiene número de serie (${known}); elegir uno con --equipment`,

  unreadable: ({ given, message }) => `${given}: ${message}`,
  oneFigure: ({ given }) => `${given}: se esperaba un solo dato con su unidad`,
  marksAndStep: ({ given }) => `${given}: se esperaban marcas y un paso, por ejemplo "700 mL by 10"`,
  stepNotAboveZero: ({ given }) => `${given}: el paso debe ser mayor que 0`,
  otherUnit: ({ given, measure, units }) =>
    `${given}: se esperaba una unidad de ${measure}, por ejemplo ${units}`,
  everyNeedsNoDocument: ({ found }) => `due: --every no necesita documento; se encontró ${found}`,
  everyGivesOneAnswer: () => 'due: --every da una sola respuesta, sin --brief ni --format csv',
  lastOrFirstUse: () =>
    'due: escribir --last "2022-11-20 at 301.4 h", o --from-new con la fecha del primer uso si nunca tuvo servicio',
  lastAfterNow: ({ given, last, now }) => `${given}: ${last} es posterior a ${now}, la fecha de --now`,
  badDay: ({ given }) =>
    `${given}: se esperaba una fecha y lecturas, por ejemplo "2022-11-20 at 301.4 h, 1200 mi"`,
  oneVolume: ({ given }) => `${given}: se esperaba un solo volumen, no un margen`,
  highestMarkAndStep: ({ given }) =>
    `${given}: se esperaba la marca más alta y el paso, por ejemplo "700 mL by 10"`,
  twoLengths: ({ given }) => `${given}: se esperaban dos longitudes, por ejemplo "6 mm x 1 m"`,
  crowfootNeedsLever: () =>
    '--crowfoot: escribir también la longitud de la llave, por ejemplo --lever "250 mm"',
  wrenchRange: ({ given }) => `${given}: se esperaba un margen, por ejemplo "40–200 lbf·in by 1"`,
  badAccuracy: ({ given }) => `${given}: se esperaba un porcentaje, por ejemplo 4% o "2% of full scale"`,
  oneOil: ({ given }) => `${given}: se esperaba un solo aceite, por ejemplo "80W-90 GL-4"`,
}
