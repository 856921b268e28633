/**
 * Branded quantities. A brand costs nothing at run time and stops a gram being passed for a millilitre.
 * Stored values are integers in the smallest unit of use: grams, millilitres, seconds, hundredths of a degree.
 * A temperature (Celsius) and a temperature difference (Kelvin) are different types: "+8 °F" is a difference,
 * and turning it into °C with the 32 is the classic fault.
 */
declare const unit: unique symbol;
type Quantity<U extends string> = number & { readonly [unit]: U };

export type Grams = Quantity<'g'>;
export type Millilitres = Quantity<'ml'>;
export type Millimetres = Quantity<'mm'>;
export type Metres = Quantity<'m'>;
export type Seconds = Quantity<'s'>;
export type Minutes = Quantity<'min'>;
export type Celsius = Quantity<'°C'>;
export type Kelvin = Quantity<'K'>;
export type Pascal = Quantity<'Pa'>;
/** Soluble solids, per cent by weight as sugar. */
export type Brix = Quantity<'°Bx'>;
/** A share between 0 and 1. */
export type Fraction = Quantity<'1'>;

const brand =
  <Q extends number>() =>
  (value: number): Q => {
    if (!Number.isFinite(value)) throw new RangeError(`a quantity must be a finite number, got ${value}`);
    return value as Q;
  };

export const grams = brand<Grams>();
export const millilitres = brand<Millilitres>();
export const millimetres = brand<Millimetres>();
export const metres = brand<Metres>();
export const seconds = brand<Seconds>();
export const minutes = brand<Minutes>();
export const celsius = brand<Celsius>();
export const kelvin = brand<Kelvin>();
export const pascal = brand<Pascal>();
export const brix = brand<Brix>();
export const fraction = brand<Fraction>();
