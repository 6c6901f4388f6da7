import { readTrace, type Trace } from "./trace";

const DATABASE = "plasterline";
const SHELF = "photographs under plans";

/**
 * Photographs by the key of their plan, in the browser's database: the storage that plans are kept in has room for 5 MB of text
 * alone. Everything here is tried, and a browser that keeps nothing answers no.
 */
export async function keepTrace(plan: string, trace: Trace): Promise<boolean> {
  return (await ask("readwrite", (shelf) => shelf.put(trace, plan))) !== REFUSED;
}

export async function keptTrace(plan: string): Promise<Trace | null> {
  return readTrace(await ask("readonly", (shelf) => shelf.get(plan)));
}

export async function forgetTrace(plan: string): Promise<void> {
  await ask("readwrite", (shelf) => shelf.delete(plan));
}

/** Forgets the photographs of plans that are not there any more, however they went. */
export async function forgetOtherTraces(plans: readonly string[]): Promise<void> {
  const keys = await ask("readonly", (shelf) => shelf.getAllKeys());
  if (!Array.isArray(keys)) return;
  for (const key of keys) if (typeof key === "string" && !plans.includes(key)) await forgetTrace(key);
}

const REFUSED = Symbol("refused");

async function ask(mode: IDBTransactionMode, what: (shelf: IDBObjectStore) => IDBRequest): Promise<unknown> {
  let database: IDBDatabase | null = null;
  try {
    database = await openDatabase();
    const transaction = database.transaction(SHELF, mode);
    const asked = what(transaction.objectStore(SHELF));
    // What is written is kept when the transaction is over, and not before.
    await settled(transaction);
    return asked.result;
  } catch {
    return REFUSED;
  } finally {
    database?.close();
  }
}

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(SHELF);
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
    opening.onblocked = () => failed(new Error("The database is in use."));
  });
}

function settled(transaction: IDBTransaction): Promise<void> {
  return new Promise((done, failed) => {
    transaction.oncomplete = () => done();
    transaction.onabort = () => failed(transaction.error);
    transaction.onerror = () => failed(transaction.error);
  });
}
