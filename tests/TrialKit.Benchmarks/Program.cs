using System.Globalization;
using BenchmarkDotNet.Running;
using TrialKit.Benchmarks;
using TrialKit.Benchmarks.Calibration;
using TrialKit.Benchmarks.EmergenceCalibration;

if (args is ["calibrate", var page])
{
    return CalibrationPage.Write(page);
}

if (args is ["calibrate-emergence", var trials])
{
    return EmergenceCalibrationRun.Print(int.Parse(trials, CultureInfo.InvariantCulture), Console.Out);
}

if (args is ["calibrate-evenness", var shifts])
{
    return EvennessCalibrationRun.Print(int.Parse(shifts, CultureInfo.InvariantCulture), Console.Out);
}

if (args is ["turnbull", var folder])
{
    return TurnbullBesideScript.Run(folder, Console.Out);
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
