// The reader's choices in the address: `?sleeve.band=3/8+in&units=metric`.
//
// Whatever comes from an address is a stranger's text. Only names that the page's own form has are
// taken, and only short values; an address that is too long as a whole is not read at all.

const LONGEST_ADDRESS = 4000;
const LONGEST_VALUE = 200;

// The choices in an address; `known` is the set of names that the form has.
export function readAddress(search, known) {
  const choices = new Map();
  if (search.length > LONGEST_ADDRESS) return choices;
  for (const [name, value] of new URLSearchParams(search)) {
    if (known.has(name) && value.length <= LONGEST_VALUE && !choices.has(name)) {
      choices.set(name, value);
    }
  }
  return choices;
}

// The address of these choices, from `?` on; empty when there are none.
export function writeAddress(choices) {
  const written = new URLSearchParams([...choices]).toString();
  return written && `?${written.replaceAll("%2F", "/")}`;
}
