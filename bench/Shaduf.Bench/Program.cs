using BenchmarkDotNet.Running;
using Shaduf.Bench.Desk;
using Shaduf.Bench.Pack;
using Shaduf.Bench.Station;
using Shaduf.Bench.Steel;
using Shaduf.Bench.Workshop;

// Lists the benches and runs those chosen: dotnet run -c Release --project bench/Shaduf.Bench -- --filter '*Colebrook*'
// Where the harness cannot build its own copy: ... --filter '*Stand*' --inProcess (--job Dry for one quick look)
// By processor time, for a machine that does other work besides:
// ... -- growth docs/rack-growth.svg  a rack's time over its members, with the plot of docs/performance.md
// ... -- racks [brief ...]            the racks of the examples, or of some briefs
// ... -- stands                       stands, and the footings of those racks
// ... -- logs FOLDER                  logs of a month, a year and five years by the minute
// ... -- sheets                       their drawing sheets in three formats, and the solid model
// ... -- cuts                         cut plans of 200 and 2,000 parts
// ... -- desk /usr/bin/chromium       the desk in a browser
if (args is ["growth", var plot])
{
    RackGrowth.Write(plot);
}
else if (args is ["racks", .. var briefs])
{
    RackTable.Write(briefs);
}
else if (args is ["stands"])
{
    StandTable.Write();
}
else if (args is ["logs", var folder])
{
    LogTimes.Write(folder);
}
else if (args is ["sheets"])
{
    SheetTimes.Write();
}
else if (args is ["cuts"])
{
    CutTimes.Write();
}
else if (args is ["desk", var chromium])
{
    await DeskTimes.WriteAsync(chromium);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
