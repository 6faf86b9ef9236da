using WetCheck.Cli;

return (int)CommandLine.Run(args, Terminal.Real());
