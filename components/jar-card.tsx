import styles from './jar-card.module.css';

export type JarCardShown = {
  lot: string;
  slug: string;
  name: string;
  allergens: readonly string[];
  ingredients: string | null;
  doubts: readonly string[];
  samePan: readonly { line: string; allergens: readonly string[] }[];
  trees: readonly string[];
  youngTrees: readonly { cultivar: string; forSale: number }[];
  madeOn: string;
  bestBefore: string | null;
  net: string | null;
  against: readonly string[];
  onHand: boolean;
};

/** What is in it, for whoever asks: allergens first and bold. Shows no stock, no people, no cost. */
export function JarCard({ card: c, jar }: { card: JarCardShown; jar: string | null }) {
  return (
    <article className={styles.card} aria-label={`What is in ${jar ?? c.lot}`}>
      <p className={styles.allergens}>
        {c.ingredients === null ? (
          <strong>What went in is not on record: no answer about allergens can be given.</strong>
        ) : c.allergens.length > 0 ? (
          <strong>Contains: {c.allergens.join(', ')}</strong>
        ) : (
          'None of the listed allergens went in.'
        )}
      </p>
      <dl className={styles.facts}>
        <Fact what="Jar" value={jar ?? c.lot} />
        {c.ingredients ? <Fact what="Ingredients, heaviest first" value={c.ingredients} /> : null}
        {c.doubts.length > 0 ? <Fact what="By the recipe, no weight on record" value={c.doubts.join(', ')} /> : null}
        <Fact
          what="Made that day in the same pan"
          value={
            c.samePan.length === 0
              ? 'nothing else'
              : c.samePan
                  .map((m) => (m.allergens.length > 0 ? `${m.line} (contains ${m.allergens.join(', ')})` : m.line))
                  .join('; ')
          }
        />
        <Fact what="Made" value={c.madeOn} />
        {c.bestBefore ? <Fact what="Best before" value={c.bestBefore} /> : null}
        {c.net ? <Fact what="Net weight" value={c.net} /> : null}
        <Fact what="Trees and rows" value={c.trees.length > 0 ? c.trees.join(', ') : 'none on record'} />
        {c.youngTrees.map((y) => (
          <Fact key={y.cultivar} what="Young trees of this cultivar" value={`${y.forSale} (${y.cultivar})`} />
        ))}
      </dl>
      <p className={c.against.length > 0 ? styles.no : styles.may}>
        {c.against.length > 0 ? `Not for sale: ${c.against.join('; ')}.` : 'May go to the stall.'}
      </p>
    </article>
  );
}

const Fact = ({ what, value }: { what: string; value: string }) => (
  <div>
    <dt>{what}</dt>
    <dd>{value}</dd>
  </div>
);
