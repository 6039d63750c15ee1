using BenchmarkDotNet.Running;
using TrialKit.Benchmarks.Calibration;

if (args is ["calibrate", var page])
{
    return CalibrationPage.Write(page);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
