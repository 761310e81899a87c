# Values for tests/reference/review-tests.test.ts: profile limits and joint tests of Cox models, stratified log-rank, Holm,
# multi-state shares with late entries, Turnbull's estimate. Writes data/review-tests.json.
# Rscript tests/reference/review.R, from the top folder. R 4.2.2, survival 3.5-3 (Debian 12).
suppressMessages({library(survival); library(jsonlite)})

# Profile limits of one coefficient: the others are fitted again for every value of it (an offset).
profile_limits <- function(d, term, others) {
  f0 <- as.formula(paste("Surv(time, status) ~", paste(c(term, others), collapse = "+")))
  fit <- coxph(f0, d, ties = "efron", control = coxph.control(eps = 1e-13, iter.max = 100))
  target <- fit$loglik[2] - qchisq(0.95, 1) / 2
  height <- function(b) {
    d$.off <- b * d[[term]]
    rhs <- if (length(others)) paste("offset(.off) +", paste(others, collapse = "+")) else "offset(.off)"
    g <- coxph(as.formula(paste("Surv(time, status) ~", rhs)), d, ties = "efron", control = coxph.control(eps = 1e-13, iter.max = 100))
    g$loglik[length(g$loglik)] - target
  }
  b <- coef(fit)[[term]]; s <- sqrt(vcov(fit)[term, term])
  c(exp(uniroot(height, c(b - 8 * s, b), tol = 1e-12)$root), exp(uniroot(height, c(b, b + 8 * s), tol = 1e-12)$root))
}
gd <- fromJSON("tests/reference/data/survival.json")$gehan$data
g <- data.frame(time = gd$time, status = gd$status, control = as.integer(gd$group == unique(gd$group)[1]))
a <- survival::aml; a$nonmaintained <- as.integer(a$x == "Nonmaintained")
v <- survival::veteran
for (cell in c("smallcell", "adeno", "large")) v[[cell]] <- as.integer(v$celltype == cell)
cells <- c("smallcell", "adeno", "large")
small <- v[seq(1, nrow(v), 4), ]
joint <- function(d, test, others) {
  full <- coxph(as.formula(paste("Surv(time, status) ~", paste(c(test, others), collapse = "+"))), d, ties = "efron", control = coxph.control(eps = 1e-13, iter.max = 100))
  part <- coxph(as.formula(paste("Surv(time, status) ~", paste(others, collapse = "+"))), d, ties = "efron", control = coxph.control(eps = 1e-13, iter.max = 100))
  chisq <- 2 * (full$loglik[2] - part$loglik[2])
  list(chisq = chisq, df = length(test), p = pchisq(chisq, length(test), lower.tail = FALSE))
}
strat <- survdiff(Surv(time, status) ~ trt + strata(celltype), v)
three <- survdiff(Surv(time, status) ~ celltype + strata(trt), v)
sd <- function(s) { k <- length(s$n) - 1; list(chisq = s$chisq, df = k, p = pchisq(s$chisq, k, lower.tail = FALSE)) }

# Stays with late entries and four ways of leaving; limits as survfit gives them (log).
set.seed(21); n <- 60
late <- ifelse(runif(n) < 0.3, sample(1:20, n, TRUE), 0)
stop <- late + sample(1:60, n, TRUE)
way <- sample(0:4, n, TRUE, c(2, 2, 1, 1, 4))
late[1:20] <- 0
f <- survfit(Surv(late, stop, factor(way, 0:4)) ~ 1, id = seq_len(n))
on <- c(30, 60)
at <- summary(f, times = on, extend = TRUE)
states <- list(late = late, stop = stop, way = way, time = f$time, pstate = f$pstate, lower = f$lower, upper = f$upper, n_risk = f$n.risk[, 1])

# Turnbull: alive and dead as found on some day after moving out (days in tens).
left <- c(0, 30, 60, 90, 0, 120, 30, 200, 90, 365, 60, 0, 180, 90)
right <- c(30, 60, NA, NA, 90, NA, 120, NA, 365, NA, 90, 200, NA, 180)
t <- survfit(Surv(ifelse(left == 0, NA, left), right, type = "interval2") ~ 1)
out <- list(meta = list(r = "4.2.2", survival = as.character(packageVersion("survival"))),
  profile = list(gehan = profile_limits(g, "control", character()), aml = profile_limits(a, "nonmaintained", character()),
    small_trt = profile_limits(small, "trt", c("karno", cells)), small_karno = profile_limits(small, "karno", c("trt", cells))),
  joint = list(all = joint(v, cells, c("trt", "karno")), small = joint(small, cells, c("trt", "karno"))),
  small_rows = seq(1, nrow(v), 4),
  veteran = list(time = v$time, status = v$status, trt = v$trt, karno = v$karno, celltype = as.character(v$celltype)),
  aml = list(time = a$time, status = a$status, nonmaintained = a$nonmaintained),
  gehan = list(time = g$time, status = g$status, control = g$control),
  stratified = list(trt_by_cell = sd(strat), cell_by_trt = sd(three)),
  holm = list(p = c(0.012, 0.2, 0.004, 0.03, 0.5, 0.012), adjusted = p.adjust(c(0.012, 0.2, 0.004, 0.03, 0.5, 0.012), "holm")),
  states = states,
  turnbull = list(left = left, right = right, time = t$time, surv = t$surv))
write(toJSON(out, auto_unbox = TRUE, digits = NA, null = "null", na = "null"), "tests/reference/data/review-tests.json")
print(t$time); print(t$surv); print(cbind(f$time,f$pstate)[1:10,])
