/** Constants of nature used by the formulas. Sources: gas constant (CODATA 2018) and molar masses in g/mol (IUPAC atomic weights). */
export const GAS_CONSTANT = 8.314462618;
export const ZERO_CELSIUS_K = 273.15;

export const MOLAR_MASS = {
  water: 18.015268,
  sucrose: 342.2965,
  glucose: 180.156,
  fructose: 180.156,
  sorbitol: 182.17,
  citric: 192.124,
  malic: 134.087,
  tartaric: 150.087,
  quinic: 192.17,
  oxalic: 90.03,
  potassium: 39.098,
} as const;
