# evencatch in R: a data frame of catches in, a list of data frames out, the digits of the library. Nothing is ported: the
# package's one script runs in V8 (package V8) where it is installed, else in Node. Needs jsonlite.

# catches  data frame, one row a catch, with the columns of a file of catches: turns and net_kg at least
# setup    list as a setup file holds, or the path of one; NULL: none
# options  list, such as tolerance = 0.03, language = "de"
# core     path of evencatch.core.js; NULL: of the package installed here, or above
# engine   "V8", "node", or "auto": V8 where it is installed
evencatch <- function(catches, setup = NULL, options = list(), core = NULL,
                      engine = c("auto", "V8", "node")) {
  engine <- match.arg(engine)
  if (engine == "auto") engine <- if (requireNamespace("V8", quietly = TRUE)) "V8" else "node"
  if (is.null(core)) core <- evencatch_core()
  question <- sprintf('{"rows":%s,"setup":%s,"options":%s}', as_json(catches), setup_json(setup),
                      if (length(options) == 0) "{}" else as_json(options))
  answer <- jsonlite::fromJSON(
    if (engine == "V8") answer_in_v8(core, question) else answer_in_node(core, question)
  )
  if (!is.null(answer$error)) stop(answer$error$message, call. = FALSE)
  # A table without rows has no columns either.
  lapply(answer$tables, function(table) if (is.data.frame(table)) table else data.frame())
}

# Fifteen digits, as many as R itself prints: a weight stays what was written, 6.42 and not 6.4199999999999999.
as_json <- function(x) {
  if (is.data.frame(x)) {
    dates <- vapply(x, inherits, logical(1), what = c("Date", "POSIXt"))
    minutes <- function(date) {
      if (inherits(date, "Date")) format(date) else format(date, "%Y-%m-%dT%H:%M")
    }
    x[dates] <- lapply(x[dates], minutes)
  }
  jsonlite::toJSON(x, dataframe = "rows", auto_unbox = TRUE, digits = NA, na = "null", null = "null")
}

setup_json <- function(setup) {
  if (is.null(setup)) return("null")
  if (!is.character(setup)) return(as_json(setup))
  paste(readLines(setup, encoding = "UTF-8", warn = FALSE), collapse = "\n")
}

answer_in_v8 <- function(core, question) {
  context <- V8::v8()
  context$source(core)
  context$call("evencatch.answerJson", question)
}

answer_in_node <- function(core, question) {
  folder <- tempfile("evencatch-")
  dir.create(folder)
  on.exit(unlink(folder, recursive = TRUE))
  place <- function(name) file.path(folder, name)
  write_utf8 <- function(text, path) {
    con <- file(path, open = "wb")
    on.exit(close(con))
    writeBin(charToRaw(enc2utf8(as.character(text))), con)
  }
  write_utf8(question, place("question.json"))
  write_utf8(paste(
    "const { readFileSync, writeFileSync } = require('node:fs');",
    "const [core, question, answer] = process.argv.slice(2);",
    "require('node:vm').runInThisContext(readFileSync(core, 'utf8'));",
    "writeFileSync(answer, evencatch.answerJson(readFileSync(question, 'utf8')));",
    sep = "\n"
  ), place("run.cjs"))
  paths <- c(place("run.cjs"), core, place("question.json"), place("answer.json"))
  status <- system2("node", shQuote(paths))
  if (status != 0) stop("node could not run ", core, " (status ", status, ")", call. = FALSE)
  text <- readLines(place("answer.json"), encoding = "UTF-8", warn = FALSE)
  paste(text, collapse = "\n")
}

evencatch_core <- function() {
  folder <- normalizePath(".")
  repeat {
    inside <- c("node_modules/evencatch/dist/evencatch.core.js", "dist/evencatch.core.js")
    found <- Filter(file.exists, file.path(folder, inside))
    if (length(found) > 0) return(found[[1]])
    if (dirname(folder) == folder)
      stop("evencatch.core.js is not here: npm install evencatch, or name it as `core`", call. = FALSE)
    folder <- dirname(folder)
  }
}
