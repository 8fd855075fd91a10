/**
 * VDI 2230, 2001 edition, fine threads at 90 % of yield: preload in kN and tightening torque in N·m for classes 8.8,
 * 10.9 and 12.9. R2: a fastener distributor's handbook page. Printed digits.
 */
export const VDI_2230_FINE = [
  {
    thread: 'M8x1',
    friction: '0.10',
    kilonewtons: ['20.7', '30.4', '35.6'],
    newtonMetres: ['22.8', '33.5', '39.2'],
  },
  {
    thread: 'M8x1',
    friction: '0.12',
    kilonewtons: ['20.2', '29.7', '34.7'],
    newtonMetres: ['26.1', '38.3', '44.9'],
  },
  {
    thread: 'M8x1',
    friction: '0.14',
    kilonewtons: ['19.7', '28.9', '33.9'],
    newtonMetres: ['29.2', '42.8', '50.1'],
  },
  {
    thread: 'M10x1.25',
    friction: '0.10',
    kilonewtons: ['32.4', '47.5', '55.6'],
    newtonMetres: ['44', '65', '76'],
  },
  {
    thread: 'M10x1.25',
    friction: '0.12',
    kilonewtons: ['31.6', '46.4', '54.3'],
    newtonMetres: ['51', '75', '87'],
  },
  {
    thread: 'M10x1.25',
    friction: '0.14',
    kilonewtons: ['30.8', '45.2', '52.9'],
    newtonMetres: ['57', '83', '98'],
  },
  {
    thread: 'M12x1.25',
    friction: '0.10',
    kilonewtons: ['49.1', '72.1', '84.4'],
    newtonMetres: ['79', '116', '135'],
  },
  {
    thread: 'M12x1.25',
    friction: '0.12',
    kilonewtons: ['48.0', '70.5', '82.5'],
    newtonMetres: ['90', '133', '155'],
  },
  {
    thread: 'M12x1.25',
    friction: '0.14',
    kilonewtons: ['46.8', '68.7', '80.4'],
    newtonMetres: ['101', '149', '174'],
  },
  {
    thread: 'M14x1.5',
    friction: '0.10',
    kilonewtons: ['66.4', '97.5', '114.1'],
    newtonMetres: ['124', '182', '213'],
  },
  {
    thread: 'M14x1.5',
    friction: '0.12',
    kilonewtons: ['64.8', '95.2', '111.4'],
    newtonMetres: ['142', '209', '244'],
  },
  {
    thread: 'M14x1.5',
    friction: '0.14',
    kilonewtons: ['63.2', '92.9', '108.7'],
    newtonMetres: ['159', '234', '274'],
  },
  {
    thread: 'M16x1.5',
    friction: '0.10',
    kilonewtons: ['89.6', '131.6', '154.0'],
    newtonMetres: ['189', '278', '325'],
  },
  {
    thread: 'M16x1.5',
    friction: '0.12',
    kilonewtons: ['87.6', '128.7', '150.6'],
    newtonMetres: ['218', '320', '374'],
  },
  {
    thread: 'M16x1.5',
    friction: '0.14',
    kilonewtons: ['85.5', '125.5', '146.9'],
    newtonMetres: ['244', '359', '420'],
  },
  {
    thread: 'M18x1.5',
    friction: '0.10',
    kilonewtons: ['120', '171', '200'],
    newtonMetres: ['283', '403', '472'],
  },
  {
    thread: 'M18x1.5',
    friction: '0.12',
    kilonewtons: ['117', '167', '196'],
    newtonMetres: ['327', '465', '544'],
  },
  {
    thread: 'M18x1.5',
    friction: '0.14',
    kilonewtons: ['115', '163', '191'],
    newtonMetres: ['368', '523', '613'],
  },
  {
    thread: 'M20x1.5',
    friction: '0.10',
    kilonewtons: ['151', '215', '252'],
    newtonMetres: ['392', '558', '653'],
  },
  {
    thread: 'M20x1.5',
    friction: '0.12',
    kilonewtons: ['148', '211', '246'],
    newtonMetres: ['454', '646', '756'],
  },
  {
    thread: 'M20x1.5',
    friction: '0.14',
    kilonewtons: ['144', '206', '241'],
    newtonMetres: ['511', '728', '852'],
  },
  {
    thread: 'M22x1.5',
    friction: '0.10',
    kilonewtons: ['186', '264', '309'],
    newtonMetres: ['529', '754', '882'],
  },
  {
    thread: 'M22x1.5',
    friction: '0.12',
    kilonewtons: ['182', '259', '303'],
    newtonMetres: ['613', '873', '1022'],
  },
  {
    thread: 'M22x1.5',
    friction: '0.14',
    kilonewtons: ['178', '253', '296'],
    newtonMetres: ['692', '985', '1153'],
  },
  {
    thread: 'M24x2',
    friction: '0.10',
    kilonewtons: ['213', '304', '355'],
    newtonMetres: ['666', '949', '1110'],
  },
  {
    thread: 'M24x2',
    friction: '0.12',
    kilonewtons: ['209', '297', '348'],
    newtonMetres: ['769', '1095', '1282'],
  },
  {
    thread: 'M24x2',
    friction: '0.14',
    kilonewtons: ['204', '290', '339'],
    newtonMetres: ['865', '1232', '1442'],
  },
]

/**
 * Across flats and ISO 273 medium holes in mm, from memory (M), for the bearing diameter (0.9·s + hole) / 2.
 */
export const HEAD_SIZES: Readonly<Record<string, readonly [flats: number, hole: number]>> = {
  M8x1: [13, 9],
  'M10x1.25': [16, 11],
  'M12x1.25': [18, 13.5],
  'M14x1.5': [21, 15.5],
  'M16x1.5': [24, 17.5],
  'M20x1.5': [30, 22],
}
