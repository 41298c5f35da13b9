int calculated = PackageConsumer.Rim.Calculate();
return calculated == 0 ? PackageConsumer.Rim.ReadPlanAndWrite() : calculated;
