/** What a form posts to: an address, or a server action handed down by the page. */
export type FormAction = string | ((data: FormData) => void | Promise<void>);
