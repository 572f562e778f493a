/** The fields that a type names: without leave for others, without `readonly`, what was put together as one. */
type Named<T> = T extends readonly unknown[]
  ? { -readonly [Item in keyof T]: Named<T[Item]> }
  : T extends object
    ? { -readonly [Field in keyof T as unknown extends T[Field] ? never : Field]: Named<T[Field]> }
    : T;

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/**
 * Where two types are not the same, as `decisions.lid.fittedWidth`: a field that only one names, that only one may leave out,
 * or that has another type. Never when they are the same.
 *
 * @internal
 */
export type Unlike<A, B, Path extends string> = UnlikeNamed<Named<A>, Named<B>, Path>;

type UnlikeNamed<A, B, Path extends string> =
  Same<A, B> extends true ? never : [Within<A, B, Path>] extends [never] ? Path : Within<A, B, Path>;

type Within<A, B, Path extends string> = [A, B] extends [readonly (infer ItemOfA)[], readonly (infer ItemOfB)[]]
  ? UnlikeNamed<ItemOfA, ItemOfB, `${Path}[]`>
  : [A, B] extends [object, object]
    ? {
        [Field in (keyof A | keyof B) & string]: Field extends keyof A & keyof B
          ? UnlikeNamed<A[Field], B[Field], `${Path}.${Field}`>
          : `${Path}.${Field}`;
      }[(keyof A | keyof B) & string]
    : never;
