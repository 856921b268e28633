import { Field } from './field.tsx';

/** For a part of a set-aside only: closed, or blank, it is all of it. */
export const PartOf = () => (
  <details>
    <summary>Only a part of it</summary>
    <Field name="partG" label="This much" hint="the rest stays as it is" unit="kg" inputMode="decimal" />
  </details>
);
