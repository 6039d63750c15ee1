# Times survfit on the intervals that `TrialKit.Benchmarks turnbull FOLDER` wrote. usage: Rscript turnbull.R FILE.csv
suppressMessages(library(survival))
x <- read.csv(commandArgs(TRUE)[1])
r <- ifelse(is.infinite(x$right), NA, x$right)
took <- system.time(f <- survfit(Surv(x$left, r, type = "interval2") ~ 1))
cat(sprintf("survival %s: %.2f s elapsed, %.2f s CPU, %d points\n", packageVersion("survival"), took[["elapsed"]], took[["user.self"]] + took[["sys.self"]], length(f$time)))
