import type { ReportTexts } from '../reportTexts.js'
import { count } from './count.js'

const METERS = { hours: 'horas', distance: 'distancia' } as const
const MARKS = { point: 'punto decimal', comma: 'coma decimal' } as const

const countFindings = (value: number): string => count(value, 'aviso', 'avisos')
const countReadings = (value: number): string => count(value, 'lectura', 'lecturas')
const countFiles = (value: number): string => count(value, 'archivo', 'archivos')
const countFolders = (value: number): string => count(value, 'carpeta', 'carpetas')

/** What commands on documents print, in Spanish. */
export const reports: ReportTexts = {
  labelled: ({ label, value }) => `${label}: ${value}`,
  written: ({ path }) => `Escrito: ${path}`,
  nothingWritten: 'No se escribió nada.',
  nameLogFile: 'No se escribió nada: indicar el archivo para el historial con --out HISTORIAL.',
  nameLogFolder: 'No se escribió nada: indicar la carpeta para los historiales con --out CARPETA.',
  emptyFolder: ({ path }) => `${path}: ningún archivo .json o .yaml en esta carpeta`,
  emptyFolderBelow: ({ path }) => `${path}: ningún archivo .json o .yaml en esta carpeta ni por debajo`,
  skippedNotice: ({ notice }) => `${notice}; omitida`,
  skippedPipe: ({ path }) => `${path} es una tubería o un dispositivo: omitido`,

  findings: 'Avisos',
  entry: ({ position, severity, message }) => `${position}: ${severity}: ${message}`,
  inFiles: ({ message, count: files }) => `${message} (${files} archivos)`,
  alsoIn: ({ places, more }) =>
    `; también en ${places}${more === 0 ? '' : ` y ${count(more, 'archivo más', 'archivos más')}`}`,
  alsoAtLines: ({ lines }) => `; también en la línea ${lines}`,
  at: ({ code, path }) => `${code} en ${path}`,
  waived: ({ reason }) => `(excepción: ${reason})`,
  more: ({ count: findings }) =>
    `... y ${findings} más: corregir antes estos, o listar todos con --format json.`,
  missingKeys: ({ keys, last }) => `Faltan las claves ${keys} y ${last}.`,
  write: ({ text }) => `escribir: ${text}`,
  writeMeaning: ({ meaning }) => `se espera: ${meaning}, por ejemplo`,
  belongsAt: ({ meaning, place }) => `${meaning}: va en ${place}, por ejemplo`,
  indentWithSpaces: 'sangrar con espacios',
  overrideSetsOne: 'una sustitución fija un solo valor, por ejemplo',

  column: ({ column, message }) => `Columna ${column}: ${message}`,
  notATable: ({ problem }) => `no es una tabla: ${problem}`,
  repeatedColumn: 'la columna aparece más de una vez',
  cellWithoutColumn: ({ cell }) => `“${cell}” no está en ninguna columna con nombre`,
  whichMachine: '¿qué máquina es esta?',
  whichGearcase: '¿qué cárter tiene esta abertura?',
  rowRepeated: 'ya hay una fila para esta pieza',
  cellContradictsRow: 'otra celda de esta fila tiene un valor para la misma pieza',
  unknownColumn: 'se esperaba gearcase, opening o una ruta como /oilSpace/oils',
  severalUnits: ({ machine, units }) => `${machine} tiene distancias en ${units.replace(', ', ' y ')}`,
  machineColumnMissing: 'se esperaba una columna machine con el identificador o el número de serie',
  dateColumnMissing: 'se esperaba una columna date',
  dataColumnMissing: 'se esperaba una columna hours, distance [km], entry o sheet',
  unitMissing: 'se esperaba una unidad, por ejemplo distance [km] u hours [h]',
  columnIgnored: 'la columna no se usa',
  contradictsEarlier: ({ cell, earlier }) => `“${cell}” contradice “${earlier}” de una fila anterior`,
  contradictsLine: ({ cell, earlier, line }) => `“${cell}” contradice “${earlier}” de la línea ${line}`,
  badDate: ({ cell }) => `se esperaba una fecha como 2023-10-06, se encontró “${cell}”`,
  badNumber: ({ cell, mark }) => `se esperaba un número con ${MARKS[mark]}, se encontró “${cell}”`,
  noEntry: 'esta fila no tiene entrada ni lectura',

  checked: ({ documents, folders, findings, level }) =>
    `${count(documents, 'documento leído', 'documentos leídos')}${folders === 0 ? '' : ` de ${countFolders(folders)}`}, ${countFindings(findings)} del nivel ${level} o superior.`,
  skipped: ({ parts }) => `Omitido: ${parts}.`,
  otherFiles: ({ count: files }) => `${countFiles(files)} ni .json ni .yaml`,
  pipes: ({ count: pipes }) => count(pipes, 'tubería', 'tuberías'),
  emptyFolders: ({ count: folders }) => `${countFolders(folders)} sin documentos`,
  unsearchedFolders: ({ count: folders }) =>
    `${count(folders, 'carpeta oculta, enlazada o llamada', 'carpetas ocultas, enlazadas o llamadas')} node_modules`,
  baselineUsed: ({ accepted, unused }) =>
    `Lista de avisos aceptados: ${count(accepted, 'aceptado', 'aceptados')}, ${unused} ya no se encuentran.`,
  baselineWritten: ({ path }) => `Lista de avisos aceptados escrita en ${path}.`,
  noSafeFix: 'Ningún aviso con corrección segura.',
  fixed: ({ findings, files }) =>
    `Corregido: ${countFindings(findings)} en ${countFiles(files)}. Comparar cada cambio con el manual de la máquina.`,
  canFix: ({ findings, files }) =>
    `Se puede corregir: ${countFindings(findings)} en ${countFiles(files)}; no se escribió nada. Comparar cada cambio con el manual de la máquina.`,

  notToBeUsed: 'no usar',
  noService: 'ningún servicio',
  moreDue: ({ count: services }) => `(+${services} pendientes)`,
  faultOpen: ({ date, record, message }) => `NO USAR: avería pendiente desde ${date} (${record}). ${message}`,
  sampleOpen: ({ bottle, gearcase, date, record, laboratory }) =>
    `Muestra de aceite ${bottle} de ${gearcase}, ${date} (${record})${laboratory === '' ? '' : `, laboratorio: ${laboratory}`}: aún sin resultado.`,
  linesRead: ({ lines, errors }) => `${count(lines, 'línea', 'líneas')}, ${errors} con errores.`,
  progress: ({ lines, share }) => `${lines} líneas${share === '' ? '' : `, ${share}`}`,
  line: ({ line, message }) => `línea ${line}: ${message}`,
  columnsNotRead: ({ columns }) => `Columnas no leídas: ${columns}.`,
  by: ({ name }) => `por ${name}`,
  corrects: ({ record }) => `corrige ${record}`,
  correctedBy: ({ record }) => `corregido por ${record}`,
  sample: ({ bottle, result }) => `; muestra ${bottle}: ${result === '' ? 'sin resultado' : result}`,
  doesNotCount: ({ reason }) => `No cuenta. ${reason}`,
  entryDoesNotCount: ({ entry, reason }) => `${entry}: no cuenta. ${reason}`,
  topUp: ({ date, volume, oil, gearcase }) => `${date}  reposición: ${volume} de ${oil}, ${gearcase}`,

  steps: ({ name, path }) => `Pasos: ${name}, de ${path}`,
  seeFull: 'Datos, herramientas, pasos y registro: --full',
  cardWritten: ({ paths }) => `Ficha escrita: ${paths}`,
  papersWritten: ({ paths }) => `Papeles escritos: ${paths}`,
  cuesWritten: ({ paths }) => `Guion y subtítulos escritos: ${paths}`,
  wallProgress: ({ written, all }) => `${written} de ${all} fichas de pared`,
  wallWritten: ({ written, all, folder }) => `${written} de ${all} fichas de pared escritas en ${folder}`,
  slipWritten: ({ path }) => `Informe escrito: ${path}`,
  notYetInLog: ({ record }) => `En el informe, pero aún no en el historial: ${record}`,

  notKnownFor: ({ machine }) => `No se sabe de ${machine}`,
  load: ({ day, van, machines }) => `${day}, ${van}: ${machines}`,
  kitFor: ({ machines }) => `Juego para ${machines}`,
  spare: ({ name }) => `${name}, de repuesto: solo si la pieza vieja no pasa la inspección`,
  sampleBottle: 'botella de muestra limpia con etiqueta',
  countFasteners: ({ part }) => `Contar las fijaciones (${part}): el manual no indica su número.`,
  toOrder: 'Para pedir, para todos los juegos',
  toOrderFor: ({ day, van }) => `Para pedir para ${day}, ${van}`,
  nothing: ({ heading }) => `${heading}: nada`,
  leftOver: ({ volume }) => `sobran ${volume}`,
  noContainer: 'envase no conocido',
  packages: ({ oil, packages }) => `${oil}: ${packages}`,
  nothingDue: 'No hay nada pendiente.',

  noUsedOil: 'No hay aceite usado registrado.',
  usedOil: ({ sum }) => `Aceite usado: ${sum}`,
  noRecipient: 'destinatario no registrado',
  keptApartCaution:
    'No echar nunca el aceite guardado aparte en el depósito de aceite usado. Preguntar al punto de recogida y cumplir las normas locales.',
  keptApart: ({ volume }) => `${volume} guardados aparte`,
  withoutReceipt: ({ volume }) => `${volume} sin recibo`,
  withoutVolume: ({ count: lines }) => `${count(lines, 'línea', 'líneas')} sin volumen`,
  drainedNotCounted: ({ volume }) => `drenado allí, no contado: ${volume}`,
  noVolume: 'volumen no registrado',
  drained: ({ volume }) => `drenados ${volume}`,
  to: ({ name }) => `a ${name}`,
  receipt: ({ number }) => `recibo ${number}`,
  keptApartBecause: ({ reason }) => `GUARDADO APARTE: ${reason}`,

  stepRemoved: ({ id, action }) => `Paso quitado: ${id}: ${action}`,
  stepWithoutPart: ({ id, part }) => `Paso quitado: ${id}: esta máquina no tiene ${part}`,
  stepAdded: ({ id, action }) => `Paso añadido: ${id}: ${action}`,
  stepMoved: ({ id }) => `Paso movido: ${id}`,
  stepsRebuilt: 'Pasos rehechos en el orden usual: los cambios sueltos no bastaban',
  lostNote: ({ id, note }) => `Nota sin paso: ${id}: ${note}`,
  figureChanged: ({ steps, figure, from, to }) => `Cambiado en ${steps}: ${figure}: ${from} -> ${to}`,
  nothingThere: 'nada',
  sameEffect: 'Los dos procedimientos tienen el mismo efecto.',
  sameFigures: 'Las variantes tienen los mismos datos.',
  noDifference: 'Ninguna diferencia.',
  step: ({ change, id }) => `${change}: paso ${id}`,
  finalState: ({ path, first, second }) => `estado final cambiado ${path}: ${first} -> ${second}`,
  finding: ({ change, code }) => `${change}: aviso ${code}`,
  notStated: 'no indicado',
  cannotTell: 'no se sabe',
  nothingToFix: 'Nada que corregir.',
  noChangeHelps: 'Ningún cambio ayuda.',
  dangerousFixed: 'Peligroso, corregido:',
  alsoFixed: 'También corregido:',
  filledIn: 'Rellenado:',
  filledCount: ({ count: filled }) =>
    `${filled} datos e identificadores rellenados, cada uno con su único valor posible.`,
  rebuilt:
    'Demasiados errores para cambios sueltos: los pasos están ahora en el orden usual, con los identificadores, notas y demás pasos propios.',
  changes: 'Cambios:',
  signs: '+ añadido, - quitado o movido, * otros datos u otro identificador',

  recordExists: ({ id }) => `No añadido: el historial ya tiene un registro ${id}.`,
  otherSheet: 'No añadido: el registro es de otra hoja de datos.',
  otherMachine: 'No añadido: el registro es de otra máquina.',
  recordAppended: ({ path, id, count: records }) =>
    `Añadido a ${path}: ${id}, ${count(records, 'registro', 'registros')}.`,
  fillInRecord:
    'Sustituir cada ?, corregir las entradas que difieran del trabajo y borrar el trabajo no hecho. Después añadirlo: record <registro> <historial> <hoja> --out HISTORIAL',
  topUpExists: 'No añadido: el historial ya tiene esta reposición.',
  topUpAppended: ({ path, volume, date, count: topUps }) =>
    `Añadido a ${path}: ${volume} el ${date}, ${count(topUps, 'reposición', 'reposiciones')}.`,
  readingsAdded: ({ hours, distance, kept }) =>
    `${countReadings(hours)} de horas y ${countReadings(distance)} de distancia añadidas; ${kept} omitidas, ya en el historial.`,
  meterAdded: ({ meter }) => `El historial no tenía contador de ${METERS[meter]}: se añadió.`,
  logChanged: 'No se escribió nada: el historial cambió mientras tanto, y las lecturas ya no encajan en él.',
  logChangedAt: ({ path }) =>
    `${path}: cambió mientras tanto, y las lecturas ya no encajan en él; no se escribió.`,
  fleetAdded: ({ logs, hours, distance, kept, records }) =>
    `${count(logs, 'historial', 'historiales')}: ${countReadings(hours)} de horas y ${countReadings(distance)} de distancia añadidas; ${kept} omitidas, ya en los historiales; ${count(records, 'registro añadido', 'registros añadidos')}.`,
  logsWritten: ({ folder, count: logs }) =>
    `Escrito: ${count(logs, 'historial', 'historiales')} en ${folder}`,
  noNumber: 'sin número',
  numbered: ({ number, message }) => `${number}: ${message}`,
  noLogHasNumber: ({ count: readings }) =>
    `ningún historial tiene este número; ${countReadings(readings)} sin añadir`,
  severalLogsHaveNumber: ({ ids }) => `varios historiales tienen este número: ${ids}`,
  recordOf: ({ date, message }) => `Registro del ${date}: ${message}`,
}
