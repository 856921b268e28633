import { Button } from './button.tsx';
import type { FormAction } from './form-action.ts';
import styles from './own-recipe-form.module.css';

export type OwnRecipeWaysProps = {
  /** Code of a recipe of the household's own; null for one of the book. */
  code: string | null;
  version: number | null;
  /** Superseded by a newer version, or taken off the list. */
  old: boolean;
  /** May begin a recipe of one's own. */
  mayCopy: boolean;
  recipeId: string;
  drop: FormAction;
  id: string;
};

/** From a recipe of the book to one's own; from one's own to a new version of it, or off the list. */
export function OwnRecipeWays({ code, version, old, mayCopy, recipeId, drop, id }: OwnRecipeWaysProps) {
  if (!mayCopy) return null;
  return (
    <div className={styles.ways}>
      {code ? <p>{`Your own, version ${version}${old ? ', no longer offered' : ''}.`}</p> : null}
      <a href={`/recipes/own?from=${encodeURIComponent(recipeId)}`}>Write my own from this one</a>
      {code && !old ? (
        <>
          <a href={`/recipes/own?change=${encodeURIComponent(code)}`}>Change it</a>
          <form action={drop}>
            <input type="hidden" name="id" value={id} />
            <input type="hidden" name="code" value={code} />
            <Button kind="quiet">Take it off the list</Button>
          </form>
        </>
      ) : null}
    </div>
  );
}
