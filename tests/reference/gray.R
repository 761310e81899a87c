# Gray's test as cmprsk works it out, for tests/reference/gray.test.ts. Writes data/gray.json.
# Rscript tests/reference/gray.R, from the top folder. R 4.2.2, cmprsk 2.2-11, survival 3.5-3 (Debian 12).
suppressMessages({library(survival); library(cmprsk); library(jsonlite)})

entry <- function(title, citation, time, cause, group) {
  keep <- !is.na(time) & !is.na(group) & !is.na(cause)
  time <- as.integer(time[keep]); cause <- as.integer(cause[keep]); group <- as.character(group[keep])
  tests <- suppressWarnings(cuminc(time, cause, group, cencode = 0)$Tests)
  causes <- sort(unique(cause[cause > 0]))
  list(title = title, citation = citation, time = time, cause = cause, group = group,
    tests = lapply(seq_along(causes), function(i) list(cause = causes[i],
      # cmprsk's own p is 1 - pchisq(...), which loses its digits where p is small.
      chisq = unname(tests[i, "stat"]), df = unname(tests[i, "df"]),
      p = unname(pchisq(tests[i, "stat"], tests[i, "df"], lower.tail = FALSE)))))
}
# Made-up stays in whole days, many of them on one day; ways drawn with the probabilities given by group.
made <- function(title, seed, sizes, ways, days, censor) {
  set.seed(seed)
  group <- rep(letters[seq_along(sizes)], sizes)
  n <- length(group)
  way <- sapply(match(group, letters), function(g) sample(seq_along(ways[[g]]), 1, prob = ways[[g]]))
  time <- sample(days, n, replace = TRUE)
  entry(title, "none (synthetic)", time, ifelse(runif(n) < censor, 0, way), group)
}
p <- survival::pbc
t <- survival::transplant
m <- survival::mgus1[!duplicated(survival::mgus1$id), ]
sets <- list(
  pbc_stage = entry("Primary biliary cirrhosis: transplant (1), death (2), by stage 1 to 4, in months",
    "R data set survival::pbc", p$time %/% 30, p$status, p$stage),
  pbc_drug = entry("The same, the trial's two arms", "R data set survival::pbc", p$time %/% 30, p$status, p$trt),
  transplant_blood = entry("Waiting for a liver: death (1), transplant (2), withdrawn (3), by blood group, in weeks",
    "R data set survival::transplant", t$futime %/% 7, as.integer(t$event) - 1L, t$abo),
  mgus1_sex = entry("Monoclonal gammopathy, 241 patients: first row of each, by sex, in years",
    "R data set survival::mgus1", m$stop %/% 365, as.integer(m$event) - 1L, m$sex),
  ties_five = made("Five groups, ten days, four ways", 11, c(30, 20, 12, 8, 5),
    list(c(5, 2, 1, 1), c(2, 5, 1, 1), c(1, 1, 1, 1), c(3, 1, 1, 2), c(1, 2, 3, 1)), 0:9, 0.2),
  ties_three = made("Three groups, everybody within four days, nobody censored", 12, c(15, 15, 15),
    list(c(3, 1), c(1, 1), c(1, 3)), 1:4, 0),
  never_in_one = made("A way that one group never takes", 13, c(20, 20, 6),
    list(c(1, 1), c(0, 1), c(2, 1)), 1:30, 0.3),
  single = made("Two large groups and one of a single colony", 14, c(25, 25, 1),
    list(c(4, 1, 1), c(1, 1, 1), c(1, 1, 1)), 5:40, 0.25),
  thirty = made("Seven groups of yard size, days to 90", 15, c(45, 38, 30, 21, 12, 7, 3),
    list(c(6, 3, 1, 1), c(5, 3, 1, 1), c(4, 3, 2, 1), c(6, 2, 1, 1), c(1, 4, 2, 1), c(2, 2, 1, 1), c(1, 1, 1, 1)), 0:90, 0.2))
note <- list(r = paste(R.version$major, R.version$minor, sep = "."), cmprsk = as.character(packageVersion("cmprsk")),
  survival = as.character(packageVersion("survival")), test = "k-sample test of Gray (1988), cmprsk::cuminc, rho = 0, cause 0 = censored")
write(toJSON(c(list(meta = note), sets), auto_unbox = TRUE, digits = NA, null = "null", na = "null"),
  "tests/reference/data/gray.json")
